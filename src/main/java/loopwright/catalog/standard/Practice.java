package loopwright.catalog.standard;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.part.Radiator;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/** The trade's allowances; common practice, no published source. */
public record Practice(
        Room room,
        Air air,
        Heat heat,
        Loop loop,
        Core core,
        Measuring measuring,
        Optional<PracticeElectric> electric,
        Optional<Cabling> cabling,
        Optional<PlumbingPractice> plumbing,
        Optional<MaterialPractice> materials,
        Optional<CarryPractice> carrying,
        Optional<Cutting> cutting,
        Optional<Workshop> workshop,
        Fastening fastening,
        Finishing finishing) {

    /** A practice that says nothing of measuring and of what is planned in a build. */
    public Practice(Room room, Air air, Heat heat, Loop loop, Core core) {
        this(room, air, heat, loop, core, Measuring.NOTHING);
    }

    /** A practice that says nothing of what is planned in a build. */
    public Practice(Room room, Air air, Heat heat, Loop loop, Core core, Measuring measuring) {
        this(
                room,
                air,
                heat,
                loop,
                core,
                measuring,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Fastening.NOTHING,
                Finishing.NOTHING);
    }

    /** The same with its own numbers for electrics. */
    public Practice withElectric(Optional<PracticeElectric> own) {
        return new Practice(
                room, air, heat, loop, core, measuring, own, cabling, plumbing, materials, carrying, cutting, workshop,
                fastening, finishing);
    }

    /** The same with its own times and prices of the workshop. */
    public Practice withWorkshop(Optional<Workshop> own) {
        return new Practice(
                room, air, heat, loop, core, measuring, electric, cabling, plumbing, materials, carrying, cutting, own,
                fastening, finishing);
    }

    /** What electrics are planned with: its own numbers, else the usual ones. */
    public PracticeElectric plannedElectric() {
        return electric.orElse(PracticeElectric.USUAL);
    }

    /**
     * Room that things need.
     *
     * @param fanNeedMm gap a fan wants to anything it is not bolted to
     * @param portRoomMm free room over a radiator's port for a low elbow
     * @param fittingRadiusMm radius of a fitting
     * @param plenumPerforatedMm gap between a fan and a perforated skin above it
     * @param plenumSolidMm gap between a fan and a solid skin
     * @param coverEdgeMm how far a cover's outline may reach past the flat of its panel
     */
    public record Room(
            Dimension fanNeedMm,
            Dimension portRoomMm,
            Dimension fittingRadiusMm,
            Dimension plenumPerforatedMm,
            Dimension plenumSolidMm,
            Dimension coverEdgeMm,
            Dimension boardThicknessMm) {}

    /**
     * What air needs.
     *
     * @param outsideDepthMinMm free depth outside a panel below which a stack cannot breathe
     * @param caseLeakCm2 seams and card slots that let air through, where a chassis does not say
     * @param panelHoleMm width of the holes of perforated panels and skins
     * @param filterHoleMm width of a filter's meshes
     * @param radiatorGapMm gap all round a stack that no gasket seals
     */
    public record Air(
            Dimension outsideDepthMinMm,
            @Limits(min = 0.3, max = 1) double solidSkinFreeAreaMin,
            @Limits(min = 0, max = 500) double caseLeakCm2,
            @Limits(min = 0.2, max = 30) double panelHoleMm,
            @Limits(min = 0.1, max = 10) double filterHoleMm,
            @Limits(min = 0, max = 5) double radiatorGapMm) {}

    /**
     * What is assumed of heat.
     *
     * @param miscHeatW heat of memory and small parts that stays in the case air
     * @param blockCaptureShare share of a processor's or a card's heat that its block takes; the rest warms the case
     * @param supplyHeatShare share of a supply's losses that warms the case; the rest leaves with its own fan
     * @param supplyEfficiencyPercent of a supply that does not say
     * @param block how a block's resistance goes with flow
     */
    public record Heat(
            @Limits(min = 0, max = 500) double miscHeatW,
            @Limits(min = 0.5, max = 1) double blockCaptureShare,
            @Limits(min = 0, max = 1) double supplyHeatShare,
            @Limits(min = 50, max = 99) double supplyEfficiencyPercent,
            BlockStep block) {}

    /**
     * A block's resistance at a flow: R·(1 − share + share·(flow/rated)^−exponent).
     *
     * @param ratedLPerMin flow that sheets give the resistance for
     * @param flowShare part of it that is the coolant's film
     */
    public record BlockStep(
            @Limits(min = 0.5, max = 20) double ratedLPerMin,
            @Limits(min = 0, max = 1) double flowShare,
            @Limits(min = 0, max = 1) double exponent) {}

    /**
     * What is assumed of a loop before its runs are planned.
     *
     * @param elbowsPerPart right-angle fittings at each part of the loop
     * @param roughnessMm of tube
     * @param pumpDutyPercent what a pump runs at where a brief does not say
     */
    public record Loop(
            @Limits(min = 0, max = 10) int elbowsPerPart,
            @Limits(min = 0, max = 1) double roughnessMm,
            @Limits(min = 5, max = 100) int pumpDutyPercent) {}

    /** Fins and tubes of a radiator that says nothing of its own. */
    public record Core(Radiator.Fins fins, Radiator.Tubes tubes) {}

    /**
     * With what lengths are read, and what a clash costs that no reading has found.
     *
     * @param instruments from the roughest and cheapest to the finest
     * @param clashHours a stage after the other
     */
    public record Measuring(List<Instrument> instruments, List<ClashHours> clashHours) {

        /** Nothing is said. */
        public static final Measuring NOTHING = new Measuring(List.of(), List.of());

        /** Copies. */
        public Measuring {
            instruments = List.copyOf(instruments);
            clashHours = List.copyOf(clashHours);
        }

        /** The instrument with this id. */
        public Optional<Instrument> findInstrument(String id) {
            return instruments.stream().filter(i -> i.id().equals(id)).findFirst();
        }
    }

    /**
     * An instrument.
     *
     * @param id what readings name it by
     * @param readsMm its smallest division, where it has one
     * @param plusMinusMm what a reading is believed to, in the hand of somebody who is careful
     * @param longestMm the longest length it can take
     * @param takes what it is for
     */
    public record Instrument(
            String id,
            String title,
            @Limits(min = 0.001, max = 10) Optional<Double> readsMm,
            @Limits(min = 0.01, max = 20) double plusMinusMm,
            @Limits(min = 1, max = 10_000) double longestMm,
            List<Takes> takes) {

        /** What a reading is believed to, hundredths of a millimetre. */
        public int plusMinusHmm() {
            return (int) Math.round(plusMinusMm * Hundredths.PER_MM);
        }

        /** The longest length it can take, hundredths of a millimetre. */
        public int longestHmm() {
            return (int) Math.round(longestMm * Hundredths.PER_MM);
        }
    }

    /** What an instrument is for. */
    public enum Takes {
        /** Over two faces that look away from each other. */
        OUTSIDE,
        /** Between two faces that look at each other. */
        INSIDE,
        /** From an edge down to a floor. */
        DEPTH,
        /** From a datum to a hole or an edge. */
        POSITION
    }

    /**
     * Hours that one clash costs when it is found at a stage.
     *
     * @param lowH when all goes well
     * @param highH when it does not
     */
    public record ClashHours(
            Stage stage,
            @Limits(min = 0, max = 200) double lowH,
            @Limits(min = 0, max = 200) double highH) {
        /** Refuses a band that runs backwards. */
        public ClashHours {
            if (!(lowH <= highH)) {
                throw new IllegalArgumentException("low_h at most high_h");
            }
        }
    }

    /** When a clash can be found, from the cheapest to the dearest. */
    public enum Stage {
        /** On paper: another stack is chosen. */
        ON_PAPER,
        /** With everything put in dry. */
        DRY_MOCK_UP,
        /** After the cuts. */
        AFTER_CUTTING,
        /** After paint. */
        AFTER_PAINT,
        /** After assembly. */
        AFTER_ASSEMBLY,
        /** After the coolant is in. */
        AFTER_FILL
    }
}
