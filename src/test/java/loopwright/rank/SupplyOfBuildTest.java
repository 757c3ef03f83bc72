package loopwright.rank;

import static loopwright.testing.Mm.box;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.Mm.span;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.part.Supply;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.fit.rules.Role;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** A brief that leaves the supply open: the quiet one where it fits, the short one where only that does. */
class SupplyOfBuildTest {

    private static final int TOP = 3;

    private static Supply supply(String id, double lengthMm, double noiseMaxDBA) {
        Supply was = SmallParts.supply(id, lengthMm, 50, 1000);
        return new Supply(
                id,
                id,
                was.variantOf(),
                was.buy(),
                was.form(),
                was.body(),
                was.plugRoomMm(),
                new Supply.Output(1000, 1, 4, 1, 4, noiseMaxDBA, List.of()));
    }

    /** A quiet supply of 170 and a loud one of 140, before a cage that leaves a bay of so many millimetres. */
    private static FitCase bay(double bayMm) {
        return new SmallCase(500, 300)
                .mount(Face.FRONT, mount("front", Axis.Z, seat("1x120", new Spot(85, 170))))
                .with(SmallParts.radiator("radiator", "1x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)))
                .with(SmallParts.processor("processor", 30))
                .with(SmallParts.card("card", mm(150), 40))
                .without("supply")
                .with(supply("quiet-long", 170, 15))
                .with(supply("loud-short", 140, 40))
                .supplyAtTheRear(400, 0)
                .obstruction("cage", box(span(400, 550), span(200, 500 - bayMm), span(0, 100)))
                .fitCase();
    }

    private static List<Build> ranked(FitCase fitCase, Order order) {
        MachineModel model = new MachineModel(fitCase.catalog().practice(), new Machine.Site(28, 0));
        return new RankSearch(fitCase, FitWish.ALL, model, () -> false)
                .run(order, TOP).listed().stream().map(RankResult.Ranked::build).toList();
    }

    private static String supplyOf(Build build) {
        return build.chosen().the(Role.SUPPLY, Supply.class).id();
    }

    @Test
    void theQuietestBuildHasTheQuietSupplyWhereItFits() {
        List<Build> builds = ranked(bay(230), Order.NOISE);
        assertThat(builds).isNotEmpty();
        assertThat(supplyOf(builds.get(0))).isEqualTo("quiet-long");
        assertThat(builds.get(0).outcome().sound().levelDBA().orElseThrow()).isLessThan(40);
    }

    @Test
    void whereOnlyTheShortOneFitsItIsShown() {
        List<Build> builds = ranked(bay(200), Order.NOISE);
        assertThat(builds).isNotEmpty();
        assertThat(builds).allMatch(b -> supplyOf(b).equals("loud-short"));
        assertThat(builds.get(0).outcome().sound().levelDBA().orElseThrow())
                .as("the supply is in the sum")
                .isGreaterThanOrEqualTo(40);
    }
}
