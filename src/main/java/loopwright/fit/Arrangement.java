package loopwright.fit;

import java.util.List;

/** What lies where in a stack, named for air drawn in; layers from outside to inside. */
public enum Arrangement {
    /** Fans between panel and radiator. */
    PUSH("push", List.of(), List.of(Layer.FANS, Layer.RADIATOR)),
    /** Fans on the inside of the radiator. */
    PULL("pull", List.of(), List.of(Layer.RADIATOR, Layer.FANS)),
    /** Fans on both sides. */
    PUSH_PULL("push-pull", List.of(), List.of(Layer.FANS, Layer.RADIATOR, Layer.FANS)),
    /** Fans in the raised cover, radiator under the panel. */
    COVER_PUSH("push", List.of(Layer.FANS), List.of(Layer.RADIATOR)),
    /** Fans in the raised cover and on the inside of the radiator. */
    COVER_PUSH_PULL("push-pull", List.of(Layer.FANS), List.of(Layer.RADIATOR, Layer.FANS)),
    /** Radiator in the raised cover, fans under the panel. */
    COVER_RADIATOR("pull", List.of(Layer.RADIATOR), List.of(Layer.FANS)),
    /** Fans and no radiator: never part of a layout, but of a build. */
    FANS_ONLY("fans only", List.of(), List.of(Layer.FANS));

    /** The ways to hang a radiator. */
    public static final List<Arrangement> OF_RADIATORS =
            List.of(PUSH, PULL, PUSH_PULL, COVER_PUSH, COVER_PUSH_PULL, COVER_RADIATOR);

    /** The layers that take depth. */
    public enum Layer {
        /** A layer of fans. */
        FANS,
        /** The radiator. */
        RADIATOR
    }

    private final String word;
    private final List<Layer> inCover;
    private final List<Layer> inside;

    Arrangement(String word, List<Layer> inCover, List<Layer> inside) {
        this.word = word;
        this.inCover = inCover;
        this.inside = inside;
    }

    /** The trade's word: push, pull or push-pull. */
    public String word() {
        return word;
    }

    /** Layers in the cover. */
    public List<Layer> inCover() {
        return inCover;
    }

    /** Layers from the seat plane inwards. */
    public List<Layer> inside() {
        return inside;
    }

    /** Whether it needs a raised cover. */
    public boolean needsCover() {
        return !inCover.isEmpty();
    }

    /** Whether there is a radiator in it. */
    public boolean hasRadiator() {
        return this != FANS_ONLY;
    }

    /** Layers of fans. */
    public int fanLayers() {
        return (int) (inCover.stream().filter(l -> l == Layer.FANS).count()
                + inside.stream().filter(l -> l == Layer.FANS).count());
    }
}
