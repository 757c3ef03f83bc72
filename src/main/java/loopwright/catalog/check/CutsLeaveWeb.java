package loopwright.catalog.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Airway.Cut;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Standards;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/**
 * A cut in front of fans leaves the metal that its screws sit in, for at least one fan size that has a seat on the mount.
 *
 * <p>Rings: {@value #RING_WEB_HMM} hundredths of a millimetre between neighbours. Rings and strips: one sheet thickness
 * from the cut to the edge of a screw hole. Common practice, no source; edge distances in sheet as several published
 * guides agree (1 t refuses).
 */
final class CutsLeaveWeb implements Check {

    /** Metal between two rings; common practice, no source. */
    private static final int RING_WEB_HMM = 600;

    @Override
    public void run(Items items, Problems problems) {
        Optional<Standards> standards = items.findOnly(Standards.class);
        if (standards.isEmpty()) {
            return;
        }
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            List<Mod> mods = chassis.value().mods();
            for (int m = 0; m < mods.size(); m++) {
                List<Airway> airways = mods.get(m).effect().airways();
                for (int a = 0; a < airways.size(); a++) {
                    check(
                            chassis,
                            "mods[" + m + "].effect.airways[" + a + "].cut_mm",
                            airways.get(a),
                            standards.get(),
                            problems);
                }
            }
        }
    }

    private static void check(
            Items.Placed<Chassis> chassis, String path, Airway airway, Standards standards, Problems problems) {
        Optional<Cut> cut = airway.cut().filter(c -> c != Cut.FULL);
        Optional<Integer> cutHmm = airway.cutMm().filter(d -> !d.isUnknown()).map(Dimension::valueHmm);
        Optional<Mount> mount = PlacedSeat.findMount(chassis.value(), airway.mount());
        Optional<Panel> panel = mount.flatMap(m -> PlacedSeat.findPanel(chassis.value(), m));
        if (cut.isEmpty() || cutHmm.isEmpty() || panel.isEmpty()) {
            return;
        }
        List<Integer> widest = new ArrayList<>();
        for (Pattern pattern : patterns(chassis.value(), airway.mount())) {
            standards.fans().stream()
                    .filter(f ->
                            f.sizeMm() == pattern.sizeMm() && !f.holePitchMm().isUnknown())
                    .forEach(f -> widest.add(
                            widest(cut.get(), pattern, f.holePitchMm().valueHmm(), panel.get())));
        }
        Optional<Integer> most = widest.stream().max(Integer::compare);
        if (most.isPresent() && cutHmm.get() > most.get()) {
            problems.add(chassis.item()
                    .problem(
                            path,
                            Hundredths.text(cutHmm.get()) + " mm",
                            "at most " + Hundredths.text(most.get()) + " mm, so that the screws keep their metal",
                            ""));
        }
    }

    private static Set<Pattern> patterns(Chassis chassis, String mount) {
        Set<Pattern> out = new TreeSet<>();
        PlacedSeat.findMount(chassis, mount).ifPresent(m -> m.seats().forEach(s -> out.add(s.pattern())));
        chassis.mods()
                .forEach(mod -> mod.effect().seats().stream()
                        .filter(s -> s.mount().equals(mount))
                        .forEach(s -> out.add(s.seat().pattern())));
        return out;
    }

    /** The widest cut that leaves the web, rounded down. */
    private static int widest(Cut cut, Pattern pattern, int pitchHmm, Panel panel) {
        int edge = ScrewHoles.HOLE_DIAMETER_HMM + 2 * panel.thicknessMm().valueHmm();
        if (cut == Cut.STRIP) {
            return pitchHmm - edge;
        }
        int toScrews = (int) Math.floor(Math.sqrt(2.0) * pitchHmm) - edge;
        return pattern.fans() == 1 ? toScrews : Math.min(toScrews, pattern.sizeMm() * Hundredths.PER_MM - RING_WEB_HMM);
    }
}
