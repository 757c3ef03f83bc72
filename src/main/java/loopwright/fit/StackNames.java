package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.quantity.Dimension;

/**
 * What the dimensions of the parts that hang on a mount are called: {@code roof:radiator.body.thickness_mm}, after the
 * mount and the fields of the part's file. One radiator may hang on two mounts, and several parts share one shape: the
 * mount tells what may be off in two ways.
 */
record StackNames(String mount, Shape shape) {

    static StackNames of(MountFrame frame, Shape shape) {
        return new StackNames(frame.mount().id(), shape);
    }

    /** A dimension of the radiator. */
    String radiator(String path) {
        return mount + ":radiator." + path;
    }

    /**
     * A dimension of the fans.
     *
     * @param layer number of their layer, from 1, outside in
     */
    String fans(int layer, String path) {
        String number = shape.arrangement().fanLayers() > 1 ? "-" + layer : "";
        return mount + ":fans" + number + "." + path;
    }

    /** What there is to measure behind a name: the layers of a stack have the same fans. */
    String toMeasure(String name) {
        String layer = mount + ":fans-";
        return name.startsWith(layer) ? mount + ":fans" + name.substring(layer.length() + 1) : name;
    }

    /** Dimensions of radiator and fans that are not known, in a cover or inside. */
    List<String> unknowns() {
        RadiatorOutline outline = shape.outline();
        List<String> out = new ArrayList<>();
        note(out, radiator("body.width_mm"), outline.width());
        note(out, radiator("body.thickness_mm"), outline.thickness());
        note(out, radiator("body.port_overhang_mm"), outline.portOverhang());
        note(out, radiator("body.blank_overhang_mm"), outline.blankOverhang());
        IntStream.rangeClosed(1, shape.arrangement().fanLayers())
                .forEach(n -> note(out, fans(n, "frame.thickness_mm"), shape.fanThickness()));
        return out;
    }

    private static void note(List<String> out, String name, Dimension dimension) {
        if (dimension.isUnknown()) {
            out.add(name);
        }
    }
}
