package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Leaf;
import loopwright.workshop.drawing.Mark;
import loopwright.workshop.drawing.Paper;
import loopwright.workshop.drawing.Sheet;
import loopwright.workshop.drawing.Sheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class TemplatesTest {

    static List<Arguments> everyMod() {
        List<Arguments> out = new ArrayList<>();
        for (Chassis chassis : Demo.CATALOG.all(Chassis.class)) {
            chassis.mods().forEach(m -> out.add(Arguments.of(chassis.id(), m.id())));
        }
        return out;
    }

    private static boolean cuts(Mod mod) {
        Mod.Effect effect = mod.effect();
        return !effect.covers().isEmpty()
                || !effect.seats().isEmpty()
                || effect.airways().stream().anyMatch(a -> a.cut().isPresent())
                || mod.kind() == Mod.Kind.CUT_WINDOW
                || !effect.routingHoles().isEmpty();
    }

    @ParameterizedTest
    @MethodSource("everyMod")
    void makesSheetsOfEveryModAlone(String chassis, String mod) {
        Setting setting = Demo.alone(chassis, mod);
        Templates templates = Templates.of(setting);
        boolean cuts = setting.mods().stream().anyMatch(TemplatesTest::cuts);
        assertThat(templates.panels().isEmpty()).isNotEqualTo(cuts);
        for (Paper paper : List.of(Paper.A4, Paper.A3, Paper.LETTER)) {
            List<Sheet> sheets = Sheets.on(paper, templates.leaves());
            assertThat(sheets.isEmpty()).isNotEqualTo(cuts);
            assertThat(sheets).allSatisfy(TemplatesTest::warnsOfCutting);
        }
        for (PanelTemplate one : templates.all()) {
            wholeOnOneTile(one.leaf());
        }
    }

    private static void warnsOfCutting(Sheet sheet) {
        List<String> texts = texts(sheet);
        assertThat(texts).anyMatch(t -> t.contains("Unplug")).anyMatch(t -> t.contains("Glass is never cut"));
        assertThat(String.join(" ", texts)).contains("goggles", "licensed");
    }

    private static List<String> texts(Sheet sheet) {
        return sheet.layers().stream()
                .flatMap(l -> l.marks().stream())
                .filter(Mark.Text.class::isInstance)
                .map(m -> ((Mark.Text) m).text())
                .toList();
    }

    /** Each hole of the drawing is whole within what one of its tiles shows. */
    private static void wholeOnOneTile(Leaf leaf) {
        for (Paper paper : List.of(Paper.A4, Paper.A3, Paper.LETTER)) {
            List<Sheet.Placed> shown = Sheets.on(paper, List.of(leaf)).stream()
                    .map(s -> s.layers().get(0))
                    .filter(p -> p.marks().equals(leaf.drawing().marks()))
                    .toList();
            for (Area hole : leaf.drawing().wholes()) {
                Area view = shown.get(0).clip();
                if (hole.widthHmm() + 400 > view.widthHmm() || hole.heightHmm() + 400 > view.heightHmm()) {
                    continue;
                }
                assertThat(shown)
                        .anyMatch(p -> p.clip()
                                .holds(new Area(
                                        hole.leftHmm() + p.byXHmm(),
                                        hole.bottomHmm() + p.byYHmm(),
                                        hole.rightHmm() + p.byXHmm(),
                                        hole.topHmm() + p.byYHmm())));
            }
        }
    }

    private static List<Hole> holes(PanelTemplate template, Hole.Purpose purpose) {
        return template.holes().stream()
                .filter(h -> h.tag().purpose() == purpose)
                .toList();
    }

    /** Industry drawing of 120 fans: 105 between holes; two side by side: 120 between fans, 15 between their holes. */
    @Test
    void drillsAPatternOfTwoFans() {
        PanelTemplate left = Templates.of(Demo.leftOfSlim()).panels().get(0);
        List<Hole> rings = holes(left, Hole.Purpose.RING);
        List<Hole> screws = holes(left, Hole.Purpose.SCREW);
        assertThat(rings).hasSize(2);
        assertThat(rings.get(0).centre().distanceHmm(rings.get(1).centre())).isCloseTo(12_000, within(1e-9));
        assertThat(screws)
                .hasSize(8)
                .allSatisfy(h -> assertThat(h.reach().widthHmm())
                        .as("M3, ISO 273 medium: 3.4")
                        .isEqualTo(340));
        List<Double> apart = new ArrayList<>();
        for (Hole one : screws) {
            for (Hole other : screws) {
                apart.add(one.centre().distanceHmm(other.centre()));
            }
        }
        assertThat(apart.stream().filter(d -> d == 10_500).count()).isEqualTo(16);
        assertThat(apart.stream().filter(d -> d == 1500).count()).isEqualTo(4);
        // Seen from outside the left side, the front is at the right: 145 from the front, 157 up.
        Area both = rings.get(0).reach().with(rings.get(1).reach());
        assertThat(both.centre()).isEqualTo(new Dot(-14_500, 15_700));
    }

    /** 8 of slide and a hole of 3.4 make slots that leave metal; 10 of slide between rows 15 apart does not. */
    @Test
    void makesSlotsWhereTheyLeaveMetal() {
        Setting one =
                Demo.setting("slim", Set.of("left-pattern-140"), List.of(Demo.hung("left", "1x140", 20_000, 15_000)));
        List<Hole> slots = holes(Templates.of(one).panels().get(0), Hole.Purpose.SCREW);
        assertThat(slots).hasSize(4).allMatch(h -> h instanceof Hole.Window w && w.isSlot());
        assertThat(slots.get(0).reach().widthHmm()).isEqualTo(800 + 340);
        assertThat(slots.get(0).reach().heightHmm()).isEqualTo(340);
        assertThat(holes(Templates.of(Demo.leftOfSlim()).panels().get(0), Hole.Purpose.SCREW))
                .allMatch(Hole.Round.class::isInstance);
    }

    /** By hand: cover 248 × 128, rings of 114 at ±60: 248/2 − 60 − 57 = 7 and 128/2 − 57 = 7 of overlap, more than 1. */
    @Test
    void seesThatACoverHidesItsRings() {
        PanelTemplate roof = Templates.of(Demo.setting(
                        "short-tower", Set.of("roof-cover-120"), List.of(Demo.hung("roof", "2x120", 17_600, 7200))))
                .panels()
                .get(0);
        assertThat(roof.findings()).noneMatch(f -> f.text().contains("they will show"));
        PanelTemplate moved = Templates.of(Demo.setting(
                        "short-tower", Set.of("roof-cover-120"), List.of(Demo.hung("roof", "2x120", 17_000, 7200))))
                .panels()
                .get(0);
        assertThat(moved.findings()).anyMatch(f -> f.text().contains("covers 1 of them by more than 1.0 mm"));
    }

    /** A window under a cover: two rings of 134 side by side are 274 × 134; the cover's flange is the seat. */
    @Test
    void cutsOneWindowUnderACoverThatIsTheSeat() {
        PanelTemplate roof = Templates.of(Demo.alone("short-tower", "roof-cover-140"))
                .panels()
                .get(0);
        List<Hole> windows = holes(roof, Hole.Purpose.WINDOW);
        assertThat(windows).hasSize(1);
        assertThat(windows.get(0).reach()).isEqualTo(new Area(3300, 5300, 16_700, 32_700));
        assertThat(((Hole.Window) windows.get(0)).cornerHmm()).isGreaterThanOrEqualTo(300);
        assertThat(holes(roof, Hole.Purpose.SCREW)).isEmpty();
        assertThat(holes(roof, Hole.Purpose.FIXING)).hasSize(8);
    }

    @Test
    void makesAnInsertThatGoesIntoItsOpening() {
        Setting setting = Demo.setting(
                "short-tower", Set.of("front-insert-140"), List.of(Demo.hung("front", "2x140", 20_000, 10_000)));
        Templates templates = Templates.of(setting);
        InsertPanel insert = templates.inserts().get(0);
        assertThat(insert.opening()).isEqualTo(new Area(3000, 6000, 17_000, 34_000));
        // By hand: 280 of aluminium in steel, 40 K: 280 × 11e-6 × 40 = 0.1232; 0.5 + 0.0616 -> 0.57; two films 0.2.
        assertThat(insert.up()).isEqualTo(new Joint(77, 57, 100));
        assertThat(insert.opening().insideHmm(insert.outline()))
                .isEqualTo(insert.across().bareHmm());
        assertThat(holes(insert.template(), Hole.Purpose.SCREW)).hasSize(8);
        assertThat(holes(templates.panels().get(0), Hole.Purpose.SCREW)).isEmpty();
    }

    @Test
    void namesWhatItCameFrom() {
        List<Sheet> sheets = Sheets.on(Paper.A4, Templates.of(Demo.leftOfSlim()).leaves());
        assertThat(texts(sheets.get(0)))
                .contains("demo / none / " + Demo.CATALOG.version(), "1:1", "1/" + sheets.size());
    }
}
