package loopwright.workshop.template;

import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Mark;

/** Something that is taken out of a sheet: a round hole, or an opening with straight sides and round corners. */
public sealed interface Hole {

    /** What it is for. */
    Tag tag();

    /** The rectangle round it. */
    Area reach();

    /** How it is drawn. */
    Mark mark();

    /** Its size in words. */
    String size();

    /** Square millimetres that it takes. */
    double squareMm();

    /** The same hole with another number. */
    Hole numbered(String id);

    /**
     * What a hole is for.
     *
     * @param id its number on the sheet
     * @param mod the mod that asks for it; empty where it is there already
     */
    record Tag(String id, Purpose purpose, String mod, String what) {}

    /** Kinds of holes: the letter of their numbers, and whether they are drilled. */
    enum Purpose {
        /** A fan's ring. */
        RING("C", Layer.CUT),
        /** A strip, a window or another opening with straight sides. */
        WINDOW("C", Layer.CUT),
        /** For the screw of a fan or radiator. */
        SCREW("H", Layer.DRILL),
        /** For what holds a raised cover. */
        FIXING("F", Layer.DRILL),
        /** For a radiator's port. */
        PORT("P", Layer.CUT),
        /** For cables. */
        CABLE("K", Layer.CUT);

        private final String letter;
        private final Layer layer;

        Purpose(String letter, Layer layer) {
            this.letter = letter;
            this.layer = layer;
        }

        String letter() {
            return letter;
        }

        Layer layer() {
            return layer;
        }

        /** Whether a screw's head has to find metal round it. */
        boolean isForScrew() {
            return layer == Layer.DRILL;
        }
    }

    /** The middle of it. */
    default Dot centre() {
        return reach().centre();
    }

    /** Its number and what it is for. */
    default String words() {
        return tag().id() + " (" + tag().what() + ")";
    }

    /** A round hole. */
    record Round(Tag tag, Dot centre, int diameterHmm) implements Hole {
        @Override
        public Area reach() {
            int low = diameterHmm / 2;
            int high = diameterHmm - low;
            return new Area(centre.xHmm() - low, centre.yHmm() - low, centre.xHmm() + high, centre.yHmm() + high);
        }

        @Override
        public Mark mark() {
            return new Mark.Circle(tag.purpose().layer(), centre, diameterHmm);
        }

        @Override
        public String size() {
            return "\u00d8" + Hundredths.text(diameterHmm);
        }

        @Override
        public double squareMm() {
            return Math.PI / 4 * diameterHmm * diameterHmm / 10_000;
        }

        @Override
        public Hole numbered(String id) {
            return new Round(new Tag(id, tag.purpose(), tag.mod(), tag.what()), centre, diameterHmm);
        }
    }

    /** An opening with straight sides; with a radius of half its short side it is a slot. */
    record Window(Tag tag, Area area, int cornerHmm) implements Hole {
        @Override
        public Area reach() {
            return area;
        }

        /** Whether its ends are round altogether. */
        public boolean isSlot() {
            return 2 * cornerHmm == Math.min(area.widthHmm(), area.heightHmm());
        }

        @Override
        public Mark mark() {
            return new Mark.Rounded(tag.purpose().layer(), area, cornerHmm);
        }

        @Override
        public String size() {
            String size = Hundredths.text(area.widthHmm()) + " x " + Hundredths.text(area.heightHmm());
            return size + (isSlot() ? " slot" : " R" + Hundredths.text(cornerHmm));
        }

        @Override
        public double squareMm() {
            return area.squareMm() - (4 - Math.PI) * cornerHmm * cornerHmm / 10_000;
        }

        @Override
        public Hole numbered(String id) {
            return new Window(new Tag(id, tag.purpose(), tag.mod(), tag.what()), area, cornerHmm);
        }
    }
}
