package loopwright.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import loopwright.answer.cable.CablePlan;
import loopwright.answer.cable.CablePlan.CableUse;
import loopwright.answer.cable.CablePlan.Feed;
import loopwright.answer.cable.CablePlan.Verdict;
import loopwright.answer.cable.CablePlanner;
import loopwright.answer.cable.DriveList;
import loopwright.catalog.basis.Span;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Supply;
import loopwright.fit.rules.Role;
import org.junit.jupiter.api.Test;

/** The cables of a slim build, against its files by hand. */
class CablePlanTest {

    private static final Inspection BUILD = SlimDesk.coolest();
    private static final CablePlan PLAN = CablePlanner.of(BUILD).orElseThrow();

    /** Depth of a seated plug, mm, from memory. */
    private static final Map<Plug, Integer> DEEP =
            Map.of(Plug.MAIN_24, 20, Plug.PROCESSOR_8, 15, Plug.CARD_8, 15, Plug.CARD_16, 15, Plug.SATA, 15);

    private static double middle(Span span) {
        return (span.from().valueHmm() + span.to().valueHmm()) / 200.0;
    }

    /**
     * The small supply hangs from (31, 4, 229), its length down, its width to the right, its height to the rear: its plugs are
     * at (31 + 62.5, 4 + 31.75, 229 - 100). The board starts at (152, 290, 228), its length down, its width to the front, its
     * height to the left.
     */
    @Test
    void noWayIsShorterThanTheDistance() {
        Board board = BUILD.build().chosen().the(Role.BOARD, Board.class);
        Board.Zone main = board.zones().stream()
                .filter(z -> z.id().equals("main-plug"))
                .findFirst()
                .orElseThrow();
        double distanceMm = Math.abs(152 - main.heightMm().to().valueHmm() / 100.0 - 93.5)
                + Math.abs(290 - middle(main.widthMm()) - 35.75)
                + Math.abs(228 - middle(main.lengthMm()) - 129);
        Feed feed = PLAN.feeds().get(0);
        assertThat(feed.plug()).isEqualTo(Plug.MAIN_24);
        assertThat(feed.way().lengthHmm() / 100.0).isGreaterThanOrEqualTo(distanceMm);
    }

    @Test
    void theLengthIsTheWayTwoPlugsAndFifteenPercent() {
        for (Feed feed : PLAN.feeds()) {
            double plugs = feed.way().after().isPresent() ? 0 : 2 * DEEP.getOrDefault(feed.plug(), 0);
            double wanted = (feed.way().lengthHmm() / 100.0 + plugs) * 1.15;
            assertThat((double) feed.wantedMm()).isBetween(wanted - 1e-6, wanted + 1);
            assertThat(feed.verdict() == Verdict.REACHES).isEqualTo(feed.wantedMm() <= feed.hasMm());
        }
    }

    @Test
    void everythingThatWantsACableIsTold() {
        int processors = BUILD.build()
                .chosen()
                .the(Role.PROCESSOR, Processor.class)
                .heat()
                .processorPlugs();
        assertThat(PLAN.feeds().stream().map(Feed::plug).filter(p -> p == Plug.MAIN_24))
                .hasSize(1);
        assertThat(PLAN.feeds().stream().map(Feed::plug).filter(p -> p == Plug.PROCESSOR_8))
                .hasSize(processors);
        assertThat(PLAN.feeds().stream().map(Feed::plug).filter(p -> p == Plug.SATA))
                .hasSize(BUILD.fitCase().placedDrives().size());
    }

    @Test
    void everyCableIsUsedOnceOrNotAtAll() {
        List<Supply.Cable> cables =
                BUILD.build().chosen().the(Role.SUPPLY, Supply.class).cables();
        assertThat(PLAN.cables()).hasSize(cables.size());
        for (CableUse use : PLAN.cables()) {
            Supply.Cable cable = cables.get(use.number() - 1);
            assertThat(use.plug()).isEqualTo(cable.plug());
            assertThat(use.feeds()).hasSizeLessThanOrEqualTo(cable.plugs());
            assertThat(use.sleeving().isPresent()).isEqualTo(!use.feeds().isEmpty());
            if (use.staysInTheBox()) {
                assertThat(use.leftMm()).isZero();
            }
        }
        assertThat(PLAN.cables().stream().mapToInt(u -> u.feeds().size()).sum()).isEqualTo((int) PLAN.feeds().stream()
                .filter(f -> f.verdict() != Verdict.NO_CABLE)
                .count());
        assertThat(PLAN.leftL())
                .isCloseTo(PLAN.cables().stream().mapToDouble(CableUse::leftL).sum(), within(1e-12));
    }

    /** Its only drive sits on the board; both places of the case stay free, one of them made by a mod that is not done. */
    @Test
    void theDriveOnTheBoardTakesNoPlace() {
        DriveList drives = DriveList.of(BUILD);
        assertThat(drives.drives()).isEmpty();
        assertThat(drives.onBoard()).containsExactly("drive-m2-500");
        boolean plateOut = BUILD.build().modIds().contains("drive-plate-out");
        assertThat(drives.places().left()).hasSize(plateOut ? 0 : 1);
        assertThat(drives.places().opened()).hasSize(plateOut ? 1 : 0);
    }
}
