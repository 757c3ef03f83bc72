package loopwright.workshop.drawing;

/** One thing that is drawn. Lengths are hundredths of a millimetre. */
public sealed interface Mark {

    /** What it is for. */
    Layer layer();

    /** A straight line. */
    record Line(Layer layer, Dot from, Dot to) implements Mark {}

    /** A circle. */
    record Circle(Layer layer, Dot centre, int diameterHmm) implements Mark {
        /** Refuses a circle without a size. */
        public Circle {
            if (diameterHmm <= 0) {
                throw new IllegalArgumentException("a circle's diameter must be above 0 but was " + diameterHmm);
            }
        }
    }

    /** A rectangle with round corners; radius 0 makes them sharp, half the short side makes a slot. */
    record Rounded(Layer layer, Area area, int radiusHmm) implements Mark {
        /** Refuses a radius that the rectangle has no room for. */
        public Rounded {
            if (radiusHmm < 0 || 2 * radiusHmm > Math.min(area.widthHmm(), area.heightHmm())) {
                throw new IllegalArgumentException("a corner of " + radiusHmm + " hundredths does not go into " + area);
            }
        }
    }

    /**
     * A line of text.
     *
     * @param at the middle of its height, at its left end, middle or right end
     * @param heightHmm height of its capitals; ISO 3098 has 1.8, 2.5, 3.5 and 5 mm
     */
    record Text(Layer layer, Dot at, int heightHmm, Stand stand, String text) implements Mark {
        /** Width of a letter for its height, on the safe side: most letters of a plain face are narrower. */
        private static final double LETTER = 0.8;

        /** How long it gets, on the safe side. */
        public int lengthHmm() {
            return (int) Math.ceil(LETTER * heightHmm * text.length());
        }

        /** The rectangle that it takes, on the safe side. */
        public Area about() {
            int before = lengthHmm() * stand.halves() / 2;
            int after = lengthHmm() - before;
            return stand.isUpwards()
                    ? new Area(at.xHmm() - heightHmm, at.yHmm() - before, at.xHmm() + heightHmm, at.yHmm() + after)
                    : new Area(at.xHmm() - before, at.yHmm() - heightHmm, at.xHmm() + after, at.yHmm() + heightHmm);
        }
    }

    /** How a text stands at its point. */
    enum Stand {
        /** It starts there. */
        STARTS(0, false),
        /** Its middle is there. */
        MIDDLE(1, false),
        /** It ends there. */
        ENDS(2, false),
        /** It starts there and runs upwards, to be read from the right. */
        STARTS_UP(0, true),
        /** It runs upwards and its middle is there. */
        MIDDLE_UP(1, true),
        /** It runs upwards and ends there. */
        ENDS_UP(2, true);

        private final int halves;
        private final boolean upwards;

        Stand(int halves, boolean upwards) {
            this.halves = halves;
            this.upwards = upwards;
        }

        /** How many halves of its length lie before the point. */
        public int halves() {
            return halves;
        }

        /** Whether it runs upwards. */
        public boolean isUpwards() {
            return upwards;
        }
    }
}
