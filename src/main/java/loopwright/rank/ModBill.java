package loopwright.rank;

import java.util.Comparator;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.fit.ModSet;

/**
 * What a mod set takes and shows.
 *
 * @param labourMin hands-on minutes at the case, paint not included
 * @param paintMin hands-on minutes of paint for what shows
 * @param waitDays days that nobody works: the longest of its mods, since they cure side by side
 * @param materialCents material and bought covers
 * @param visibleCuts cuts that show
 * @param hiddenCuts cuts that do not
 * @param wayBack the worst of its mods
 * @param heightAddedHmm how much taller the machine gets
 */
public record ModBill(
        int labourMin,
        int paintMin,
        int waitDays,
        long materialCents,
        int visibleCuts,
        int hiddenCuts,
        Mod.WayBack wayBack,
        int heightAddedHmm) {

    /** The bill of a mod set. */
    public static ModBill of(Catalog catalog, Chassis chassis, ModSet set) {
        List<Mod> mods = set.mods(chassis);
        long covers = mods.stream()
                .flatMap(m -> m.effect().covers().stream())
                .map(RaisedCover::cover)
                .mapToLong(id -> catalog.part(Cover.class, id).buy().priceCents())
                .sum();
        return new ModBill(
                mods.stream().mapToInt(m -> m.work().labourMin()).sum(),
                mods.stream().mapToInt(m -> m.work().paintMin()).sum(),
                mods.stream().mapToInt(m -> m.work().waitDays()).max().orElse(0),
                covers + mods.stream().mapToLong(m -> m.work().materialCents()).sum(),
                mods.stream().mapToInt(m -> m.look().visibleCuts()).sum(),
                mods.stream().mapToInt(m -> m.look().hiddenCuts()).sum(),
                mods.stream()
                        .map(m -> m.look().wayBack())
                        .max(Comparator.naturalOrder())
                        .orElse(Mod.WayBack.YES),
                mods.stream().mapToInt(m -> m.look().heightAddedMm().valueHmm()).sum());
    }

    private static final int MIN_PER_H = 60;

    /** Material, and hands-on time at the workshop's rate; cents, half up. */
    public long costCents(Terms terms) {
        long twice = 2L * handsOnMin() * terms.rateCentsPerH();
        return materialCents + Math.floorDiv(twice + MIN_PER_H, 2L * MIN_PER_H);
    }

    /** Days it adds: hands-on days, then the longest wait. */
    public int days(Terms terms) {
        return (int) Math.ceil(handsOnMin() / (double) MIN_PER_H / terms.workHPerDay()) + waitDays;
    }

    /** All cuts. */
    public int cuts() {
        return visibleCuts + hiddenCuts;
    }

    /** All hands-on minutes. */
    public int handsOnMin() {
        return labourMin + paintMin;
    }
}
