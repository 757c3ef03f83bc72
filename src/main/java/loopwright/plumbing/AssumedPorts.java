package loopwright.plumbing;

import java.util.List;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.PartPort.Way;
import loopwright.plumbing.route.Where;

/** Where ports are taken to be on parts whose files do not say: where fit keeps room for them. */
final class AssumedPorts {

    private static final int PARTS = 3;

    private AssumedPorts() {}

    /** Of a pump or reservoir: on the far end of its length, at one and two thirds of its width, half its height. */
    static List<Port> onFarEnd(String part, PartFrame frame) {
        int length = frame.size(frame.length());
        int width = frame.size(frame.width());
        int height = frame.size(frame.height()) / 2;
        return two(
                part,
                frame.at(length, width / PARTS, height),
                frame.at(length, 2 * width / PARTS, height),
                frame.length());
    }

    /** Of a block: on its top, at one and two thirds of its length, half its width. */
    static List<Port> onTop(String part, PartFrame frame) {
        int length = frame.size(frame.length());
        int width = frame.size(frame.width()) / 2;
        int height = frame.size(frame.height());
        return two(
                part,
                frame.at(length / PARTS, width, height),
                frame.at(2 * length / PARTS, width, height),
                frame.height());
    }

    /**
     * Of a card's block: on its top edge, at one and two thirds of the room that is kept there, half its thickness.
     *
     * @param roomLengthHmm how much of its length, from its far end, that room takes
     */
    static List<Port> onTopEdge(String part, PartFrame frame, int roomLengthHmm) {
        int start = frame.size(frame.length()) - roomLengthHmm;
        int middle = frame.size(frame.width()) / 2;
        int height = frame.size(frame.height());
        return two(
                part,
                frame.at(start + roomLengthHmm / PARTS, middle, height),
                frame.at(start + 2 * roomLengthHmm / PARTS, middle, height),
                frame.height());
    }

    private static List<Port> two(String part, Where first, Where second, Heading out) {
        return List.of(
                new Port(part, "port 1", first, out, Way.EITHER, true),
                new Port(part, "port 2", second, out, Way.EITHER, true));
    }
}
