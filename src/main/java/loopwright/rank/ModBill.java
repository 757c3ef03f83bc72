package loopwright.rank;

import java.util.Comparator;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Purchase;
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
 * @param leadDays the longest lead time of its bought covers
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
        int leadDays,
        long materialCents,
        int visibleCuts,
        int hiddenCuts,
        Mod.WayBack wayBack,
        int heightAddedHmm) {

    /** The bill of a mod set. */
    public static ModBill of(Catalog catalog, Chassis chassis, ModSet set) {
        List<Mod> mods = set.mods(chassis);
        List<Purchase> covers = mods.stream()
                .flatMap(m -> m.effect().covers().stream())
                .map(RaisedCover::cover)
                .map(id -> catalog.part(Cover.class, id).buy())
                .toList();
        return new ModBill(
                mods.stream().mapToInt(m -> m.work().labourMin()).sum(),
                mods.stream().mapToInt(m -> m.work().paintMin()).sum(),
                mods.stream().mapToInt(m -> m.work().waitDays()).max().orElse(0),
                covers.stream().mapToInt(Purchase::leadDays).max().orElse(0),
                covers.stream().mapToLong(Purchase::priceCents).sum()
                        + mods.stream().mapToLong(m -> m.work().materialCents()).sum(),
                mods.stream().mapToInt(m -> m.look().visibleCuts()).sum(),
                mods.stream().mapToInt(m -> m.look().hiddenCuts()).sum(),
                mods.stream()
                        .map(m -> m.look().wayBack())
                        .max(Comparator.naturalOrder())
                        .orElse(Mod.WayBack.YES),
                mods.stream().mapToInt(m -> m.look().heightAddedMm().valueHmm()).sum());
    }

    /** All hands-on minutes. */
    public int handsOnMin() {
        return labourMin + paintMin;
    }
}
