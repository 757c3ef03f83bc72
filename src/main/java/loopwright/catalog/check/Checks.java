package loopwright.catalog.check;

import java.util.List;
import loopwright.catalog.read.Problems;

/** All checks across the items of a catalogue. */
public final class Checks {

    private static final List<Check> ALL = List.of(
            new IdsAreWellFormed(),
            new IdsAreUnique(),
            new InstrumentsAreNamedOnce(),
            new VariantsExist(),
            new ChassisReferencesExist(),
            new CurvesFall(),
            new LossRises(),
            new CoresFit(),
            new MeasuredHeatIsPossible(),
            new HalvesAreExact(),
            new GlycolIsSaidOnce(),
            new EfficiencyLoadsRise(),
            new SupplyNoiseRises(),
            new RailsCarryRating(),
            new PlugsAgreeWithCables(),
            new CardPlugsCarryCard(),
            new ProcessorPlugsCarryPeak(),
            new DriveStartsWithinPlug(),
            new HeadersAreNamedOnce(),
            new StandardsCoverParts(),
            new PrerequisitesEnd(),
            new PrerequisitesAreAllowed(),
            new CoversExcludeEachOther(),
            new InteriorIsMeasured(),
            new PlacesAreFew(),
            new BodiesAreInside(),
            new PatchesLieInPlane(),
            new MountsLieInPlane(),
            new SeatsStayOnFlat(),
            new NewHolesMissSlots(),
            new CoversStayOnFlat(),
            new FeetCarry(),
            new FacesComeOffOnce(),
            new GlassStaysWhole(),
            new CutsLeaveWeb(),
            new CutsStayOnFlat(),
            new KindsSayWhatTheyDo(),
            new HolesLieInSheets(),
            new ParkingLiesInside(),
            new DriveScrewsAreStandard(),
            new PortsAreOnTheirFace(),
            new GrillesLieOnMounts(),
            new ScrewRulesAreWhole(),
            new PaintSystemsAreWhole());

    private Checks() {}

    /** Runs every check. */
    public static void run(Items items, Problems problems) {
        ALL.forEach(check -> check.run(items, problems));
    }
}
