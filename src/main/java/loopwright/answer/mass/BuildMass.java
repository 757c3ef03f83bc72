package loopwright.answer.mass;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.answer.Inspection;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Standing;
import loopwright.catalog.standard.CarryPractice;

/**
 * What a build weighs, where its weight is, how it stands, and what to say before somebody lifts it.
 *
 * @param dry without coolant
 * @param filled with every tank full
 * @param parts what weighs, without coolant
 * @param coolant what of it is coolant
 * @param missing what nobody has weighed: then the masses are "at least"
 * @param stand absent where the chassis does not say what it stands on
 */
public record BuildMass(
        Masses dry,
        Masses filled,
        List<Mass> parts,
        List<Mass> coolant,
        List<String> missing,
        Optional<Stand> stand,
        List<String> warnings) {

    private static final double HMM_PER_MM = 100;

    /** Copies. */
    public BuildMass {
        parts = List.copyOf(parts);
        coolant = List.copyOf(coolant);
        missing = List.copyOf(missing);
        warnings = List.copyOf(warnings);
    }

    /** Of a build. */
    public static BuildMass of(Inspection in) {
        CarryPractice practice = in.fitCase().catalog().practice().carrying().orElse(CarryPractice.USUAL);
        MassList list = new MassList(in, practice);
        Masses dry = Masses.of(list.dry());
        List<Mass> all = new ArrayList<>(list.dry());
        all.addAll(list.coolant());
        Masses filled = Masses.of(all);
        List<Mod> mods = in.build().mods().mods(in.fitCase().chassis());
        Optional<Stand> stand =
                in.fitCase().chassis().standing().map(s -> Stand.of(s, filled, longerMm(mods), practice.liftFactor()));
        return new BuildMass(
                dry,
                filled,
                list.dry(),
                list.coolant(),
                List.copyOf(list.missing()),
                stand,
                warnings(in.fitCase().chassis(), mods, filled, stand, practice));
    }

    private static double longerMm(List<Mod> mods) {
        return mods.stream()
                .filter(m -> m.kind() == Mod.Kind.LONGER_FEET)
                .flatMap(m -> m.effect().airways().stream())
                .flatMap(a -> a.addedDepthMm().stream())
                .mapToDouble(d -> d.valueHmm() / HMM_PER_MM)
                .max()
                .orElse(0);
    }

    private static List<String> warnings(
            Chassis chassis, List<Mod> mods, Masses filled, Optional<Stand> stand, CarryPractice practice) {
        List<String> out = new ArrayList<>();
        long glass = chassis.shell().panels().stream()
                .filter(p -> p.material() == Panel.Material.GLASS)
                .map(Panel::face)
                .distinct()
                .count();
        if (glass > 1) {
            out.add("glass on " + glass + " sides: two people lift it");
        } else if (filled.massKg() > practice.oneLiftKg()) {
            out.add(kg(filled.massKg()) + " kg filled: more than the " + kg(practice.oneLiftKg())
                    + " kg that one person lifts in comfort; two people");
        }
        if (stand.isEmpty()) {
            out.add("nobody says what " + chassis.id() + " stands on: no loads of feet, no tipping");
            return out;
        }
        Stand how = stand.get();
        if (how.tipDeg() < practice.tipMinDeg()) {
            out.add("tips over " + how.over() + " at " + kg(how.tipDeg()) + " degrees, practice wants "
                    + kg(practice.tipMinDeg()));
        }
        how.feet().stream()
                .filter(f -> f.loadKg() <= 0)
                .forEach(f -> out.add("foot " + f.foot() + " carries nothing: it will rock"));
        for (Stand.Hangs lift : how.lifts()) {
            if (!lift.holds()) {
                out.add(lift.title() + " is made for " + kg(lift.madeForKg()) + " kg, practice wants "
                        + kg(lift.wantedKg()) + " (" + kg(practice.liftFactor()) + " times the " + kg(lift.loadKg())
                        + " kg it carries): do not lift by it");
            }
        }
        if (isOnRoof(chassis) && isRoofOpened(chassis, mods, practice)) {
            out.add("a lifting point is on the roof, and the roof is cut open: do not lift by it");
        }
        return out;
    }

    private static boolean isOnRoof(Chassis chassis) {
        return chassis.standing().map(Standing::lifts).orElse(List.of()).stream()
                .anyMatch(l -> l.at().zMm().valueHmm()
                        >= chassis.shell().interior().heightMm().valueHmm());
    }

    /** Whether a mod cuts the roof so far that it counts as open. */
    private static boolean isRoofOpened(Chassis chassis, List<Mod> mods, CarryPractice practice) {
        return mods.stream()
                .anyMatch(m -> m.effect().covers().stream().anyMatch(c -> isRoof(chassis, c.mount()))
                        || m.effect().airways().stream()
                                .anyMatch(a -> isRoof(chassis, a.mount())
                                        && a.cut().isPresent()
                                        && open(a) >= practice.largeOpeningShare()));
    }

    private static double open(Airway airway) {
        return airway.freeArea().orElse(1.0);
    }

    private static boolean isRoof(Chassis chassis, String mount) {
        return chassis.mounts().stream()
                .filter(m -> m.id().equals(mount))
                .flatMap(m -> chassis.shell().panels().stream().filter(p -> p.id().equals(m.panel())))
                .anyMatch(p -> p.face() == Face.ROOF);
    }

    private static String kg(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replaceAll("\\.0$", "");
    }
}
