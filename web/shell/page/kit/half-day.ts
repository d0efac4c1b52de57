import './field';

/** Whether half a day stands in a form, which would be dropped in silence; it is said at the field. */
export function isHalf(form: ParentNode): boolean {
  const half = [...form.querySelectorAll('asf-field')].find((field) => field.isHalf);
  void half?.sayHalf();
  return half !== undefined;
}
