package loopwright.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loopwright.catalog.basis.Pattern;
import loopwright.quantity.Dimension;

/** A radiator stack by its dimensions: what can hang on a mount. Parts of equal dimensions give one shape. */
public record Shape(RadiatorOutline outline, Dimension fanThickness, Arrangement arrangement, PortEnd portEnd)
        implements Comparable<Shape> {

    /** Its hole pattern. */
    public Pattern pattern() {
        return outline.pattern();
    }

    /** Radiator thickness, hundredths of a millimetre. */
    public int thicknessHmm() {
        return outline.thickness().valueHmm();
    }

    /** Everything by value: equal texts are equal shapes. */
    public String text() {
        return outline.text() + "/" + fanThickness.valueHmm() + "/" + arrangement + "/" + portEnd;
    }

    /** The shape with its port end left out: what turning the radiator round does not change. */
    public String textWithoutEnd() {
        return outline.text() + "/" + fanThickness.valueHmm() + "/" + arrangement;
    }

    /** Dimensions of radiator and fans that are not known, in a cover or inside. */
    List<String> unknowns() {
        Map<String, Dimension> all = new LinkedHashMap<>();
        all.put("radiator." + pattern() + ".width", outline.width());
        all.put("radiator." + pattern() + ".thickness", outline.thickness());
        all.put("radiator." + pattern() + ".port-overhang", outline.portOverhang());
        all.put("radiator." + pattern() + ".blank-overhang", outline.blankOverhang());
        all.put("fan.thickness", fanThickness);
        return all.entrySet().stream()
                .filter(e -> e.getValue().isUnknown())
                .map(Map.Entry::getKey)
                .toList();
    }

    @Override
    public int compareTo(Shape other) {
        return text().compareTo(other.text());
    }
}
