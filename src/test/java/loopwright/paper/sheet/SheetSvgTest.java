package loopwright.paper.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import loopwright.workshop.drawing.Sheet;
import loopwright.workshop.drawing.Sheets;
import loopwright.workshop.template.Demo;
import loopwright.workshop.template.Hole;
import loopwright.workshop.template.PanelTemplate;
import loopwright.workshop.template.Templates;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SheetSvgTest {

    private static final PanelTemplate LEFT =
            Templates.of(Demo.leftOfSlim()).panels().get(0);
    private static final Sheet SHEET = Sheets.whole(LEFT.leaf());

    private static Document svg() throws Exception {
        StringWriter text = new StringWriter();
        SheetSvg.write(SHEET, new PrintWriter(text));
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)));
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    @Test
    void aUnitIsAMillimetre() throws Exception {
        Element root = svg().getDocumentElement();
        String[] box = root.getAttribute("viewBox").split(" ", -1);
        assertThat(root.getAttribute("width")).isEqualTo(box[2] + "mm");
        assertThat(root.getAttribute("height")).isEqualTo(box[3] + "mm");
    }

    /** Distances and diameters of all round holes, read back from the file, against the template. */
    @Test
    void roundHolesComeBackAsTheyWent() throws Exception {
        NodeList circles = svg().getElementsByTagName("circle");
        List<double[]> found = new ArrayList<>();
        for (int i = 0; i < circles.getLength(); i++) {
            Element circle = (Element) circles.item(i);
            if (List.of("cut", "drill").contains(circle.getAttribute("class"))) {
                found.add(new double[] {number(circle, "cx"), number(circle, "cy"), 2 * number(circle, "r")});
            }
        }
        List<Hole> holes =
                LEFT.holes().stream().filter(Hole.Round.class::isInstance).toList();
        assertThat(found).hasSameSizeAs(holes);
        for (int i = 0; i < holes.size(); i++) {
            assertThat(found.get(i)[2]).isCloseTo(holes.get(i).reach().widthHmm() / 100.0, within(1e-9));
            double right = (holes.get(i).centre().xHmm() - holes.get(0).centre().xHmm()) / 100.0;
            double up = (holes.get(i).centre().yHmm() - holes.get(0).centre().yHmm()) / 100.0;
            assertThat(found.get(i)[0] - found.get(0)[0]).isCloseTo(right, within(1e-9));
            assertThat(found.get(0)[1] - found.get(i)[1]).isCloseTo(up, within(1e-9));
        }
    }

    @Test
    void everythingOfTheDrawingIsOnTheSheet() {
        Sheet.Placed placed = SHEET.layers().get(0);
        assertThat(placed.clip().widthHmm())
                .isGreaterThanOrEqualTo(LEFT.leaf().drawing().bounds().widthHmm());
        assertThat(placed.clip().heightHmm())
                .isGreaterThanOrEqualTo(LEFT.leaf().drawing().bounds().heightHmm());
    }
}
