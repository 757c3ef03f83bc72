package loopwright.paper.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loopwright.paper.sheet.DxfEntities.Entity;
import loopwright.workshop.template.Demo;
import loopwright.workshop.template.Hole;
import loopwright.workshop.template.PanelTemplate;
import loopwright.workshop.template.Templates;
import org.junit.jupiter.api.Test;

class DrawingDxfTest {

    private static final Set<String> RELEASE_12 =
            Set.of("LINE", "CIRCLE", "ARC", "TEXT", "POLYLINE", "VERTEX", "SEQEND");

    private static String text(PanelTemplate template) {
        StringWriter text = new StringWriter();
        DrawingDxf.write(template.leaf(), new PrintWriter(text));
        return text.toString();
    }

    private static PanelTemplate left() {
        return Templates.of(Demo.leftOfSlim()).panels().get(0);
    }

    private static PanelTemplate roofWithWindow() {
        return Templates.of(Demo.alone("short-tower", "roof-cover-140"))
                .panels()
                .get(0);
    }

    private static boolean isMade(Entity entity) {
        return List.of("CUT", "DRILL").contains(entity.text(8));
    }

    @Test
    void holesComeBackAsTheyWent() {
        PanelTemplate left = left();
        List<Entity> circles = DxfEntities.read(text(left)).entities().stream()
                .filter(e -> e.kind().equals("CIRCLE") && isMade(e))
                .toList();
        assertThat(circles).hasSameSizeAs(left.holes());
        for (int i = 0; i < circles.size(); i++) {
            Hole hole = left.holes().get(i);
            assertThat(circles.get(i).number(10)).isCloseTo(hole.centre().xHmm() / 100.0, within(1e-9));
            assertThat(circles.get(i).number(20)).isCloseTo(hole.centre().yHmm() / 100.0, within(1e-9));
            assertThat(2 * circles.get(i).number(40)).isCloseTo(hole.reach().widthHmm() / 100.0, within(1e-9));
        }
    }

    /** Each arc of a window: a quarter turn, its radius the corner's, its middle inside. Worked from bulge and chord. */
    @Test
    void windowsComeBackWithTheirCorners() {
        PanelTemplate roof = roofWithWindow();
        List<Entity> vertices = new ArrayList<>();
        boolean inCut = false;
        for (Entity entity : DxfEntities.read(text(roof)).entities()) {
            inCut = entity.kind().equals("POLYLINE") ? entity.text(8).equals("CUT") : inCut;
            if (inCut && entity.kind().equals("VERTEX")) {
                vertices.add(entity);
            }
        }
        assertThat(vertices).hasSize(8);
        double left = vertices.stream().mapToDouble(v -> v.number(10)).min().orElseThrow();
        double right = vertices.stream().mapToDouble(v -> v.number(10)).max().orElseThrow();
        assertThat(right - left).isCloseTo(134, within(1e-9));
        for (int i = 0; i < 8; i++) {
            Entity from = vertices.get(i);
            Entity to = vertices.get((i + 1) % 8);
            if (from.has(42)) {
                double chord = Math.hypot(to.number(10) - from.number(10), to.number(20) - from.number(20));
                double bulge = from.number(42);
                assertThat(chord * (1 + bulge * bulge) / (4 * bulge)).isCloseTo(4.0, within(1e-6));
                assertThat(4 * Math.atan(bulge)).isCloseTo(Math.PI / 2, within(1e-6));
            }
        }
    }

    @Test
    void usesOnlyWhatReleaseTwelveHas() {
        String text = text(roofWithWindow());
        DxfEntities file = DxfEntities.read(text);
        assertThat(text.chars()).allMatch(c -> c == '\n' || (c >= 32 && c < 127));
        assertThat(file.entities()).allSatisfy(e -> {
            assertThat(RELEASE_12).contains(e.kind());
            assertThat(file.layers()).contains(e.text(8));
        });
        assertThat(text).startsWith("999\nUnits: millimetres").contains("%%c8");
    }

    @Test
    void carriesTheCautions() {
        assertThat(text(left())).contains("Unplug", "Glass is never cut", "goggles");
    }
}
