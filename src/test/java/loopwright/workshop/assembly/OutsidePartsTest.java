package loopwright.workshop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Fastening.SeatMaterial;
import loopwright.fit.Arrangement;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.MountFrame;
import loopwright.fit.Shape;
import loopwright.fit.StandingBody;
import loopwright.fit.Witness;
import loopwright.fit.rules.Chosen;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import loopwright.quantity.Dimension;
import loopwright.quantity.IntervalSet;
import loopwright.workshop.fasten.Clamped;
import loopwright.workshop.fasten.Joint;
import loopwright.workshop.fasten.LengthChoice;
import loopwright.workshop.fasten.LengthWindow;
import loopwright.workshop.fasten.ScrewSet;
import loopwright.workshop.fasten.ThreadSeat;
import org.junit.jupiter.api.Test;

/**
 * What is outside the demo's short tower, from its file by hand: the roof's inside at 434 mm, its sheet 0.8; fans of 25 mm; the cover
 * 248 x 128 with 30 free under a skin of 1.5, its middle 176 back and 72 across.
 */
class OutsidePartsTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    private static final FitCase CASE = new FitCase(
            CATALOG,
            CATALOG.chassis("short-tower"),
            CatalogReader.readBrief(Path.of("scenarios/tight-budget.yaml"), CATALOG));

    private static Witness witness(String mount, Arrangement arrangement, String... mods) {
        MountFrame frame = CASE.frames().stream()
                .filter(f -> f.mount().id().equals(mount))
                .findFirst()
                .orElseThrow();
        Shape shape = CASE.shapes().all().stream()
                .filter(s -> s.arrangement() == arrangement)
                .filter(s -> s.pattern().toString().equals("2x120"))
                .findFirst()
                .orElseThrow();
        long bits = 0;
        for (int i = 0; i < CASE.chassis().mods().size(); i++) {
            bits |= List.of(mods).contains(CASE.chassis().mods().get(i).id()) ? 1L << i : 0;
        }
        IntervalSet here = IntervalSet.of(0, 0);
        Witness.At at = new Witness.At(new Stack(frame, shape), 17_600, 7_200, here, here);
        return new Witness(new ModSet(bits), new Chosen(Map.of()), List.of(), List.of(at), List.of());
    }

    private static ScrewSet bolts(List<Clamped> layers) {
        ThreadSeat seat = new ThreadSeat(
                ScrewThread.M3, SeatMaterial.STEEL, Dimension.ofHmm(120), Dimension.ofHmm(400), "first tube");
        Joint joint =
                new Joint("roof", Joint.Holding.RADIATOR, layers, seat, List.of("radiator"), new Joint.Count(8, 6));
        LengthWindow window = new LengthWindow(2580, 2700, 3000, 3100, 0);
        return new ScrewSet(
                joint,
                340,
                window,
                new LengthChoice.Refused(Optional.empty(), Optional.empty(), Optional.empty()),
                List.of());
    }

    @Test
    void theCoverGoesOnOverTheFansAndTheirScrews() {
        Witness witness = witness("roof", Arrangement.COVER_PUSH, "roof-cover-120");
        OutsideParts outside = new OutsideParts(CASE, witness);
        Witness.At at = witness.stacks().get(0);
        SpaceBox radiator = new SpaceBox(
                "roof radiator", false, 0, new Reach(1200, 13_200), new Reach(4000, 31_200), new Reach(40_300, 43_300));
        StackPiece made = new StackPiece(
                at,
                List.of(bolts(List.of(Clamped.exactly("fan", 2500), Clamped.exactly("panel", 80)))),
                outside.held(at),
                false,
                CATALOG.standards());
        Piece stack = made.piece(new StandingBody("stack:roof", List.of(radiator)), Set.of(), false);
        assertThat(stack.bodies())
                .extracting(Piece.Body::title)
                .containsExactly("roof radiator", "roof fans in the cover");
        List<Driving.Screw> screws = stack.screws().get(0).known();
        assertThat(screws).hasSize(8).allMatch(s -> s.head().z() == 43_400 + 2500 + 80 && s.away() == Face.ROOF);
        assertThat(screws)
                .as("fans 120 apart, holes 105 apart")
                .extracting(s -> s.head().y())
                .contains(17_600 - 6000 - 5250, 17_600 + 6000 + 5250);
        assertThat(screws).extracting(s -> s.head().x()).containsOnly(7200 - 5250, 7200 + 5250);
        List<Piece> pieces = List.of(outside.lids().get(0), stack);
        Piece cover = pieces.get(0);
        assertThat(cover.title()).isEqualTo("roof cover");
        assertThat(cover.screws().get(0).count()).isEqualTo(8);
        SpaceBox skin = cover.solids().get(0);
        assertThat(skin.z()).isEqualTo(new Reach(43_400 + 80 + 3000, 43_400 + 80 + 3000 + 150));
        assertThat(skin.y()).isEqualTo(new Reach(17_600 - 12_400, 17_600 + 12_400));
        assertThat(skin.x()).isEqualTo(new Reach(7200 - 6400, 7200 + 6400));
        Assembly assembly = Assembly.of(
                pieces,
                new Hall(
                        new Reach(0, 20_000),
                        new Reach(0, 35_600),
                        new Reach(0, 43_400),
                        Set.of(Face.LEFT, Face.RIGHT),
                        List.of()),
                CATALOG.practice().fastening().drivers(),
                List.of());
        assertThat(assembly.steps()).extracting(Assembly.Step::title).containsExactly("roof stack", "roof cover");
        assertThat(assembly.steps().get(0).before()).containsExactly("roof cover (way in, driver)");
        Assembly.Service out = assembly.services().get(1);
        assertThat(out.first()).containsExactly("roof cover");
        assertThat(out.together()).containsExactly("roof radiator", "roof fans in the cover");
        assertThat(out.drain()).isTrue();
    }

    /** The closed front of the short tower has clips: its trim hides the heads of what hangs there. */
    @Test
    void aPanelWithClipsHasATrim() {
        OutsideParts outside = new OutsideParts(CASE, witness("front", Arrangement.PUSH));
        Piece trim = outside.lids().get(0);
        assertThat(trim.title()).isEqualTo("front trim");
        assertThat(trim.screws()).isEmpty();
        assertThat(trim.solids().get(0).y())
                .as("18 of free depth before a sheet of 0.8, as thick as it")
                .isEqualTo(new Reach(-1960, -1880));
        assertThat(outside.lids()).hasSize(1);
    }

    /** Bolts under the skin of a cover whose flange they hold: no driver is looked at, the cover comes with them. */
    @Test
    void aCoverOverAWindowIsHeldByTheSameBolts() {
        Witness witness = witness("roof", Arrangement.COVER_PUSH, "roof-cover-140");
        OutsideParts outside = new OutsideParts(CASE, witness);
        assertThat(outside.held(witness.stacks().get(0)))
                .extracting(Piece.Body::title)
                .containsExactly("roof fans in the cover", "roof cover");
        assertThat(outside.lids()).extracting(Piece::title).containsExactly("front trim");
    }

    /** Left out, the sides come off; a face that is named comes off, and no other. */
    @Test
    void facesComeOffAsTheFileSays() {
        assertThat(CATALOG.chassis("short-tower").shell().openFaces()).containsExactlyInAnyOrder(Face.LEFT, Face.RIGHT);
        assertThat(CATALOG.chassis("slim").shell().openFaces()).containsExactly(Face.LEFT);
        assertThat(CATALOG.chassis("squat-box").shell().openFaces())
                .containsExactlyInAnyOrder(Face.LEFT, Face.RIGHT, Face.ROOF);
        assertThat(CATALOG.chassis("slim").shell().panels())
                .extracting(Panel::face)
                .contains(Face.ROOF);
    }
}
