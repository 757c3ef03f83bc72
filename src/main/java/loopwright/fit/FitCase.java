package loopwright.fit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Drive.DriveForm;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Radiator;
import loopwright.fit.rules.Role;

/** One brief in one chassis: what every question about fitting starts from. */
public final class FitCase {

    private final Catalog catalog;
    private final Chassis chassis;
    private final Brief brief;
    private final List<MountFrame> frames;
    private final Shapes shapes;
    private final Openings openings;
    private final Seating seating;
    private final Strictness strictness;

    /** Sets the case up; nothing is solved yet. */
    public FitCase(Catalog catalog, Chassis chassis, Brief brief) {
        this(
                catalog,
                chassis,
                brief,
                Shapes.of(
                        candidates(catalog, Radiator.class, brief.loop().radiators()),
                        candidates(catalog, Fan.class, brief.loop().fans())),
                Strictness.of(brief));
    }

    private FitCase(Catalog catalog, Chassis chassis, Brief brief, Shapes shapes, Strictness strictness) {
        this.catalog = catalog;
        this.chassis = chassis;
        this.brief = brief;
        this.frames = IntStream.range(0, chassis.mounts().size())
                .mapToObj(i -> MountFrame.of(chassis, i))
                .toList();
        this.shapes = shapes;
        this.strictness = strictness;
        this.openings = new Openings(catalog, chassis);
        this.seating = new Seating(catalog, chassis, openings, brief.limits().freeAreaMin());
    }

    /** The parts of a kind that a wish allows, in order of id. */
    private static <P extends Part> List<P> candidates(Catalog catalog, Class<P> kind, Optional<Choice> wish) {
        return catalog.all(kind).stream()
                .filter(p -> wish.isEmpty() || allows(wish.get(), p))
                .toList();
    }

    private static boolean allows(Choice wish, Part part) {
        if (!wish.anyOf().isEmpty() && !wish.anyOf().contains(part.id())) {
            return false;
        }
        int floor = wish.performanceMin().orElse(0);
        if (part instanceof Processor processor) {
            return processor.performance() >= floor;
        }
        return !(part instanceof GraphicsCard card) || card.performance() >= floor;
    }

    /** The same case, in which bare rows of fans may hang too. */
    public FitCase withFanRows() {
        Set<Pattern> patterns = new TreeSet<>();
        chassis.mounts().forEach(m -> m.seats().forEach(s -> patterns.add(s.pattern())));
        chassis.mods()
                .forEach(m ->
                        m.effect().seats().forEach(s -> patterns.add(s.seat().pattern())));
        return new FitCase(catalog, chassis, brief, shapes.withFanRows(patterns), strictness);
    }

    /** The same case, in which everything is off in our favour by as much as it may be, whatever the brief asks. */
    FitCase atBestCase() {
        return new FitCase(catalog, chassis, brief, shapes, Strictness.BEST_CASE);
    }

    /** How far apart things have to be beyond their needs. */
    public Strictness strictness() {
        return strictness;
    }

    /** The parts that may fill a role, in order of id. */
    public List<? extends Part> candidates(Role role) {
        Optional<Choice> wish = switch (role) {
            case BOARD -> Optional.of(brief.parts().board());
            case PROCESSOR -> Optional.of(brief.parts().processor());
            case CARD -> Optional.of(brief.parts().card());
            case MEMORY -> Optional.of(brief.parts().memory());
            case BLOCK -> Optional.of(brief.parts().processorBlock());
            case SUPPLY -> brief.parts().supply();
            case PUMP -> brief.loop().pumps();
            case RESERVOIR -> brief.loop().reservoirs();
        };
        return candidates(catalog, role.kind(), wish);
    }

    /** The brief's drives, in its order. */
    public List<Drive> drives() {
        return brief.parts().drives().stream()
                .map(id -> catalog.part(Drive.class, id))
                .toList();
    }

    /** The brief's drives that need a place of their own, in its order. */
    public List<Drive> placedDrives() {
        return drives().stream().filter(d -> d.form() != DriveForm.M2).toList();
    }

    /** Everything the folder holds. */
    public Catalog catalog() {
        return catalog;
    }

    /** The case. */
    public Chassis chassis() {
        return chassis;
    }

    /** What the client wants. */
    public Brief brief() {
        return brief;
    }

    /** The mounts with their frames, in the chassis's order. */
    public List<MountFrame> frames() {
        return frames;
    }

    /** The shapes that the brief's radiators and fans make. */
    public Shapes shapes() {
        return shapes;
    }

    /** How open each mount is. */
    public Openings openings() {
        return openings;
    }

    Seating seating() {
        return seating;
    }
}
