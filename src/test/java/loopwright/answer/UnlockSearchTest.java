package loopwright.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import loopwright.answer.Unlocks.AtMount;
import loopwright.answer.Unlocks.Combination;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.answer.Unlocks.Unlocked;
import loopwright.answer.Unlocks.Way;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.fit.FitCase;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.ModSet;
import loopwright.rank.ModBill;
import org.junit.jupiter.api.Test;

/** The answer against the list it is read off. */
class UnlockSearchTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    private static final FitCase CASE = fitCase("slim-desk");

    /** Remembers what it has worked out: thousands of layouts share stacks. */
    private static final Cooling COOLING = new Cooling(CASE);

    private static final FitSearch SEARCH = new FitSearch(CASE, FitWish.ALL, () -> false);
    private static final FitResult FITS = SEARCH.run();
    private static final Unlocks UNLOCKS = new UnlockSearch(CASE, SEARCH, FITS, new Cooling(CASE)).answer();

    private static FitCase fitCase(String brief) {
        Brief read = CatalogReader.readBrief(Path.of("scenarios/" + brief + ".yaml"), CATALOG);
        return new FitCase(CATALOG, CATALOG.chassis(read.chassis().get(0)), read);
    }

    private static List<FoundLayout> alone(AtMount at, RadiatorClass radiator) {
        return FITS.fits().stream()
                .filter(f -> f.layout().stacks().size() == 1)
                .filter(f ->
                        f.layout().stacks().get(0).frame().index() == at.frame().index())
                .filter(f -> RadiatorClass.of(f.layout().stacks().get(0)).equals(radiator))
                .toList();
    }

    @Test
    void everyModSetIsNeededForALayoutOfItsClassAlone() {
        int ways = 0;
        for (AtMount at : UNLOCKS.mounts()) {
            for (Unlocked unlocked : at.unlocked()) {
                List<ModSet> sets = unlocked.ways().stream().map(Way::mods).toList();
                List<ModSet> needed = alone(at, unlocked.stack()).stream()
                        .flatMap(f -> f.needed().stream())
                        .toList();
                assertThat(needed).containsAll(sets);
                assertThat(sets).doesNotHaveDuplicates().doesNotContain(ModSet.NONE);
                assertThat(needed).allMatch(n -> sets.stream().anyMatch(s -> s.isSubsetOf(n)));
                assertThat(sets).allMatch(s -> sets.stream().noneMatch(o -> !o.equals(s) && o.isSubsetOf(s)));
                assertThat(unlocked.ways()).isSortedAccordingTo((a, b) -> Long.compare(a.costCents(), b.costCents()));
                ways += sets.size();
            }
        }
        assertThat(ways).isPositive();
    }

    @Test
    void whatIsDeliveredNeedsNothing() {
        for (AtMount at : UNLOCKS.mounts()) {
            for (RadiatorClass radiator : at.asDelivered()) {
                assertThat(alone(at, radiator)).anyMatch(f -> f.needed().contains(ModSet.NONE));
            }
        }
    }

    @Test
    void nothingImpossibleFitsAndItsShortfallIsPositive() {
        int impossible = 0;
        for (AtMount at : UNLOCKS.mounts()) {
            for (Unlocks.Impossible each : at.impossible()) {
                assertThat(alone(at, each.stack())).isEmpty();
                assertThat(FITS.fits())
                        .noneMatch(f -> f.layout().stacks().stream()
                                .anyMatch(s -> s.frame().index() == at.frame().index()
                                        && RadiatorClass.of(s).equals(each.stack())));
                assertThat(each.shortfall().shortfallHmm().orElse(1)).isPositive();
                assertThat(each.shortfall().blockedBy()).isNotBlank();
                impossible++;
            }
        }
        assertThat(impossible).isPositive();
    }

    @Test
    void noCombinationBeatsAnother() {
        List<Combination> all = UNLOCKS.combinations();
        assertThat(all).isNotEmpty();
        for (Combination a : all) {
            for (Combination b : all) {
                assertThat(a.equals(b) || !isNoWorse(a, b)).isTrue();
            }
        }
        for (FoundLayout found : FITS.fits()) {
            assertThat(found.needed()).allMatch(mods -> isMatched(found, mods, all));
        }
    }

    private static boolean isNoWorse(Combination a, Combination b) {
        return milli(a) >= milli(b) && a.bill().handsOnMin() <= b.bill().handsOnMin() && a.costCents() <= b.costCents();
    }

    private static long milli(Combination one) {
        return Math.round(one.conductanceWPerK() * 1000);
    }

    private static boolean isMatched(FoundLayout found, ModSet mods, List<Combination> all) {
        ModBill bill = ModBill.of(CATALOG, CASE.chassis(), mods);
        Combination one = new Combination(
                found,
                mods,
                COOLING.conductanceWPerK(found.layout(), mods),
                bill,
                bill.costCents(CASE.brief().terms()));
        return all.stream().anyMatch(a -> isNoWorse(a, one));
    }

    @Test
    void moreCutsNeverTakeLess() {
        List<CutTable.Row> rows = CutTable.rows(CASE, FITS, 3);
        assertThat(rows).hasSize(4);
        for (int n = 0; n < rows.size(); n++) {
            for (AtMount at : UNLOCKS.mounts()) {
                int mount = at.frame().index();
                List<RadiatorClass> more = rows.get(n).all().get(mount);
                assertThat(rows.get(n).hiddenOnly().get(mount)).allMatch(c -> isCovered(c, more));
                if (n > 0) {
                    assertThat(rows.get(n - 1).all().get(mount)).allMatch(c -> isCovered(c, more));
                }
            }
        }
    }

    private static boolean isCovered(RadiatorClass radiator, List<RadiatorClass> by) {
        return by.stream().anyMatch(b -> b.covers(radiator));
    }

    /** 0.95 of the smaller processor's 75 W and of the card's 90 W, and 5 W of the mini pump at 0.6 of its speed, cubed. */
    @Test
    void heatIsTheLeastOfAnyChoice() {
        assertThat(new Cooling(CASE).heatW().orElseThrow()).isCloseTo(157.83, within(1e-9));
    }
}
