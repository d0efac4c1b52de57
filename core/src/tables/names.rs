//! What parts are called, by family: the usual words of the trade, British and American.

/// Names by the code of their family, set apart by commas; each stands once.
pub const NAMES: &[(&str, &str)] = &[
    (
        "rolling-bearing",
        "bearing, wheel bearing, hub bearing, roller bearing, ball bearing, taper bearing, race, bearing cup, \
         bearing cone, needle roller, ball race, bearing race, half shaft bearing, release bearing, thrust race, \
         pinion bearing, pilot bearing",
    ),
    (
        "seal",
        "seal, oil seal, grease seal, o ring, o-ring, gasket, boot, dust boot, dust cover, gaiter, lip seal, \
         felt, felt ring, head gasket, rubber boot, dust seal, seal kit",
    ),
    ("crush-spacer", "collapsible spacer, crush spacer, crush tube, stretch bolt, torque to yield bolt, crush sleeve"),
    (
        "locking-piece",
        "split pin, cotter pin, tab washer, lock plate, locking plate, lock tab, locking tab, nylon insert nut, \
         self locking nut, stiff nut, crush washer, copper washer, sealing washer, lock wire, locking wire, \
         circlip, snap ring, retaining ring, lock washer, spring washer, star washer, tolerance ring",
    ),
    (
        "rubber-bush",
        "rubber bush, bonded bush, silent bush, suspension bush, spring bush, shackle bush, wishbone bush, \
         trailing arm bush, radius arm bush, control arm bushing, rubber bushing, bump stop, engine mount, \
         engine mounting, gearbox mounting, rubber mount, drop link bush, anti roll bar bush, damper bush, \
         bushing",
    ),
    (
        "plain-bearing",
        "bush, bronze bush, plain bearing, bearing shell, shell bearing, big end bearing, main bearing, \
         small end bush, thrust washer, king pin bush, kingpin bush, spigot bush, steel backed bush, \
         bronze bushing, camshaft bearing, big end shell, main shell, spindle bush",
    ),
    (
        "pivot-pin",
        "king pin, kingpin, swivel pin, shackle pin, pivot pin, pivot spindle, fulcrum pin, trunnion, swivel, \
         spring pin, lower fulcrum, hinge pin, pivot bolt, clevis pin, shackle",
    ),
    (
        "stub-axle",
        "stub axle, spindle, steering arm, drag link, wheel stud, upright, steering knuckle, knuckle, drop arm, \
         pitman arm, idler arm, track rod, tie rod, steering shaft, steering column, wishbone, control arm, \
         lower arm, upper arm, trailing arm, radius arm, axle beam, hub, front hub, rear hub, wheel hub, wheel, \
         road wheel, rim, brake pedal, panhard rod, tie bar, swivel axle, seat belt, wheel nut, steering wheel, \
         steering rack",
    ),
    ("ball-joint", "ball joint, track rod end, tie rod end, rod end, ball pin, balljoint, steering joint"),
    (
        "spring",
        "coil spring, leaf spring, road spring, torsion bar, spring, spring leaf, front spring, rear spring, \
         anti roll bar, sway bar",
    ),
    (
        "damper",
        "damper, shock, shock absorber, lever arm damper, telescopic damper, lever damper, strut, \
         lever arm shock, steering damper",
    ),
    ("brake-disc", "brake disc, disc, brake rotor, rotor, disc rotor"),
    ("brake-drum", "brake drum, drum"),
    (
        "brake-lining",
        "brake shoe, shoe, brake pad, pad, brake lining, lining, leading shoe, trailing shoe, handbrake shoe, \
         parking brake shoe",
    ),
    (
        "hydraulic-cylinder",
        "wheel cylinder, master cylinder, slave cylinder, caliper, brake caliper, brake cylinder, brake servo, \
         hydraulic cylinder, caliper piston, clutch cylinder",
    ),
    (
        "hose-pipe",
        "brake hose, fuel hose, brake pipe, fuel pipe, brake line, fuel line, flexible hose, hose, \
         hydraulic pipe, pipe, clutch hose, radiator hose",
    ),
    (
        "gear",
        "gear, crown wheel, ring gear, pinion, crown wheel and pinion, ring and pinion, differential, \
         differential gear, gear wheel, sun gear, planet gear, laygear, layshaft, sprocket, rack, worm, \
         starter ring, timing gear",
    ),
    (
        "shaft",
        "half shaft, axle shaft, propeller shaft, propshaft, prop shaft, driveshaft, drive shaft, shaft, \
         universal joint, input shaft, output shaft, spline, mainshaft",
    ),
    (
        "casting",
        "casting, housing, bracket, casing, cover, backplate, back plate, axle casing, diff casing, carrier, \
         gearbox casing, sump, oil pan, manifold, bell housing, differential carrier, cap, mounting plate, \
         support, clamp, pulley, lever, yoke, flange, spacer, distance piece, plate, end cover, \
         steering box casing, arm, rod, block, cylinder head, dust shield, splash shield",
    ),
    (
        "engine-internal",
        "crankshaft, crank, piston, piston ring, camshaft, cam, cam follower, tappet, valve, valve spring, \
         valve guide, push rod, pushrod, rocker, rocker shaft, con rod, connecting rod, cylinder liner, \
         gudgeon pin, wrist pin, flywheel",
    ),
    (
        "unit",
        "carburettor, carburetor, pump, fuel pump, water pump, oil pump, dynamo, generator, alternator, starter, \
         starter motor, instrument, gauge, speedometer, distributor, steering box, regulator, wiper motor, \
         heater, radiator, magneto, voltage regulator, ignition coil, fuel gauge, ammeter, battery, injector, \
         thermostat, servo, gearbox, clutch, horn, switch, solenoid, tank, fuel tank, clutch plate, petrol tank, \
         gas tank",
    ),
    (
        "wiring",
        "wiring, loom, wiring loom, wiring harness, harness, cable, control cable, handbrake cable, \
         parking brake cable, throttle cable, choke cable, speedometer cable, wire, lead, earth strap, \
         ground strap, battery lead, clutch cable",
    ),
    (
        "panel",
        "panel, wing, fender, door, floor, floor pan, sill, rocker panel, bonnet, hood, boot lid, trunk lid, \
         valance, inner wing, bulkhead, firewall, wheel arch, outrigger, crossmember, chassis, door skin, \
         mudguard, tailgate, roof, front panel",
    ),
    (
        "bright-trim",
        "trim, badge, lamp, handle, bumper, over rider, overrider, hub cap, headlamp, headlight, tail lamp, \
         side lamp, grille, mirror, door handle, bezel, moulding, molding, window winder, windscreen frame, \
         rear lamp, indicator, emblem, nave plate, bright trim",
    ),
    ("glass", "glass, windscreen, windshield, window, quarter light, door glass, rear screen, lens"),
    (
        "soft-trim",
        "seat, carpet, headlining, headliner, door card, door trim panel, soft trim, cushion, squab, \
         weather strip, sun visor, seat cover, hood cover, tonneau, upholstery",
    ),
    (
        "fastener",
        "bolt, nut, screw, washer, stud, set screw, plain washer, dowel, clip, rivet, pin, u bolt, castle nut, \
         hub nut, hose clip, flat washer, key, woodruff key, grease nipple, shim, shim pack, drain plug, plug, \
         setscrew, castellated nut",
    ),
    (
        "safety-fastener",
        "high tensile bolt, caliper bolt, big end bolt, steering arm bolt, crown wheel bolt, flywheel bolt, \
         seat belt bolt, hub bolt, brake caliper bolt, wheel bolt, propshaft bolt, con rod bolt",
    ),
];

/// The names of a family one by one.
pub fn names_of(listed: &str) -> impl Iterator<Item = &str> {
    listed.split(", ")
}
