package loopwright.workshop.fasten;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.ScrewThread;
import loopwright.fit.Arrangement;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.MountFrame;
import loopwright.fit.Shape;
import loopwright.quantity.Dimension;
import loopwright.quantity.Known;
import loopwright.workshop.finish.PaintedParts;
import org.junit.jupiter.api.Test;

/** The layers of each arrangement on the demo's short tower, written down by hand from its file. */
class StackJointsTest {

    /** A brief without a look: covers keep the finish they come with. */
    private static final FitCase PLAIN = fitCase("scenarios/tight-budget.yaml");

    /** The demo's brief asks for paint. */
    private static final FitCase PAINTED = fitCase("scenarios/demo.yaml");

    private static FitCase fitCase(String brief) {
        return new FitCase(
                        SampleStacks.CATALOG,
                        SampleStacks.CATALOG.chassis("short-tower"),
                        CatalogReader.readBrief(Path.of(brief), SampleStacks.CATALOG))
                .withFanRows();
    }

    private static ModSet mods(FitCase fitCase, String... ids) {
        long bits = 0;
        for (int i = 0; i < fitCase.chassis().mods().size(); i++) {
            if (List.of(ids).contains(fitCase.chassis().mods().get(i).id())) {
                bits |= 1L << i;
            }
        }
        return new ModSet(bits);
    }

    private static List<StackJoints.Noted> joints(FitCase fitCase, String mount, Arrangement arrangement, ModSet mods) {
        MountFrame frame = fitCase.frames().stream()
                .filter(f -> f.mount().id().equals(mount))
                .findFirst()
                .orElseThrow();
        int sizeMm = 120;
        Radiator radiator =
                SampleStacks.CATALOG.part(Radiator.class, mount.equals("rear") ? "rad-1x120-30a" : "rad-2x120-30a");
        Fan fan = SampleStacks.CATALOG.all(Fan.class).stream()
                .filter(f -> f.id().equals("fan-120-25-1300"))
                .findFirst()
                .orElseThrow();
        Shape shape = fitCase.shapes().all().stream()
                .filter(s -> s.arrangement() == arrangement)
                .filter(s -> s.pattern().sizeMm() == sizeMm
                        && s.pattern().fans() == radiator.pattern().fans())
                .findFirst()
                .orElseThrow();
        Optional<Radiator> hung = arrangement.hasRadiator() ? Optional.of(radiator) : Optional.empty();
        return new StackJoints(fitCase, new Stack(frame, shape), mods, hung, fan).all(PaintedParts.of(fitCase, mods));
    }

    private static String text(List<StackJoints.Noted> joints) {
        return joints.stream()
                .map(StackJoints.Noted::joint)
                .map(j -> j.holding().word() + " " + j.count().holes() + ": "
                        + j.layers().stream()
                                .map(l -> l.name() + " " + l.thicknessHmm())
                                .collect(Collectors.joining(" + ")))
                .collect(Collectors.joining(" | "));
    }

    private static String text(FitCase fitCase, String mount, Arrangement arrangement, String... mods) {
        return text(joints(fitCase, mount, arrangement, mods(fitCase, mods)));
    }

    @Test
    void fansBetweenPanelAndRadiator() {
        assertThat(text(PLAIN, "roof", Arrangement.PUSH))
                .isEqualTo("radiator 8: panel 80 + gasket, squeezed 100 + fan 2500");
    }

    @Test
    void fansBehindTheRadiatorHaveScrewsOfTheirOwn() {
        assertThat(text(PLAIN, "roof", Arrangement.PULL))
                .isEqualTo("radiator 8: panel 80 + gasket, squeezed 100 | far fans 8: fan 2500");
        assertThat(text(PLAIN, "front", Arrangement.PUSH_PULL))
                .isEqualTo("radiator 8: panel 80 + fan 2500 | far fans 8: fan 2500");
    }

    @Test
    void fansInACoverHoldTheRadiatorThroughThePanel() {
        assertThat(text(PLAIN, "roof", Arrangement.COVER_PUSH, "roof-cover-120"))
                .isEqualTo("radiator 8: fan 2500 + panel 80 + gasket, squeezed 100 | cover 8: cover flange 150");
        assertThat(text(PLAIN, "roof", Arrangement.COVER_PUSH_PULL, "roof-cover-120"))
                .isEqualTo("radiator 8: fan 2500 + panel 80 + gasket, squeezed 100 | far fans 8: fan 2500"
                        + " | cover 8: cover flange 150");
    }

    @Test
    void aRadiatorInACoverIsHeldFromInside() {
        assertThat(text(PLAIN, "roof", Arrangement.COVER_RADIATOR, "roof-cover-radiator"))
                .isEqualTo("radiator 8: fan 2500 + gasket, squeezed 100 + panel 80 | cover 8: cover flange 150");
    }

    @Test
    void overAWindowTheCoversFlangeIsTheSeat() {
        assertThat(text(PLAIN, "roof", Arrangement.COVER_PUSH, "roof-cover-140"))
                .startsWith("radiator 8: fan 2500 + cover flange 150 + gasket, squeezed 100");
    }

    /** The insert of 1.5 is painted: two faces of 0.1. */
    @Test
    void anInsertTakesThePanelsPlace() {
        assertThat(text(PLAIN, "front", Arrangement.PUSH, "front-insert-140"))
                .isEqualTo("radiator 8: insert panel 150 + paint, two faces 20 + fan 2500");
    }

    /** Cutting the grille out paints the rear sheet and puts a wire guard of 1.6 under the heads. */
    @Test
    void bareFansAreScrewedIntoTheirFrames() {
        assertThat(text(PLAIN, "rear", Arrangement.FANS_ONLY, "rear-grille-cut"))
                .isEqualTo("fans 4: grille 160 + panel 80 + paint, two faces 20");
        assertThat(joints(PLAIN, "rear", Arrangement.FANS_ONLY, ModSet.NONE)
                        .get(0)
                        .joint()
                        .seat()
                        .thread())
                .isEqualTo(ScrewThread.FAN);
    }

    @Test
    void aBriefThatAsksForPaintHasItsCoversPainted() {
        assertThat(text(PAINTED, "roof", Arrangement.COVER_PUSH, "roof-cover-120"))
                .endsWith("cover 8: cover flange 150 + paint, two faces 20");
    }

    @Test
    void undoingSharedBoltsFreesAllTheyRunThrough() {
        assertThat(joints(PLAIN, "front", Arrangement.PUSH, mods(PLAIN, "front-insert-140"))
                        .get(0)
                        .joint()
                        .frees())
                .containsExactly("insert panel", "fan", "radiator");
    }

    /** Four for one fan, six to eight for two. */
    @Test
    void aBodyHasItsLeastScrews() {
        assertThat(List.of(1, 2, 3).stream().map(Joint.Count::ofBody))
                .containsExactly(new Joint.Count(4, 4), new Joint.Count(8, 6), new Joint.Count(12, 8));
    }

    @Test
    void aGuessedDepthIsSaid() {
        Joint joint =
                joints(PLAIN, "roof", Arrangement.PULL, ModSet.NONE).get(0).joint();
        ThreadSeat seat = joint.seat();
        ScrewSets sets = new ScrewSets(SampleStacks.CATALOG, SampleStacks.STOCK);
        assertThat(sets.of(joint, List.of()).warnings()).isEmpty();
        ThreadSeat guessed = new ThreadSeat(
                seat.thread(), seat.material(), seat.threaded(), new Dimension(400, 100, Known.ASSUMED), seat.before());
        Joint unsure = new Joint(joint.mount(), joint.holding(), joint.layers(), guessed, joint.frees(), joint.count());
        assertThat(sets.of(unsure, List.of()).warnings())
                .containsExactly(
                        "depth to the first tube is assumed: probe it, hole by hole, before any screw goes in");
    }
}
