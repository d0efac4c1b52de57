export type Side = 'left' | 'right';

/** From the driver's seat. Capitals are kept for these two. */
export const sides = {
  left: 'LEFT', right: 'RIGHT', centre: 'middle', none: 'no side',
  front: 'front', rear: 'rear',
  driverLeft: 'driver sits left', driverRight: 'driver sits right',
  fromTheSeat: 'Left and right are from the driver’s seat.',
};
