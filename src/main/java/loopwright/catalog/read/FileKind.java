package loopwright.catalog.read;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.measure.Reading;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Grille;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Screw;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.Standards;

/** What a file holds, as its schema line says: {@code loopwright/pumps/1}. */
public enum FileKind {
    /** Radiators. */
    RADIATORS("radiators", "radiator", Radiator.class),
    /** Fans. */
    FANS("fans", "fan", Fan.class),
    /** Pumps. */
    PUMPS("pumps", "pump", Pump.class),
    /** Reservoirs. */
    RESERVOIRS("reservoirs", "reservoir", Reservoir.class),
    /** Processor blocks. */
    BLOCKS("blocks", "block", Block.class),
    /** Boards. */
    BOARDS("boards", "board", Board.class),
    /** Processors. */
    PROCESSORS("processors", "processor", Processor.class),
    /** Graphics cards. */
    GRAPHICS_CARDS("graphics-cards", "graphics card", GraphicsCard.class),
    /** Memory kits. */
    MEMORY("memory", "memory", Memory.class),
    /** Power supplies. */
    SUPPLIES("supplies", "supply", Supply.class),
    /** Drives. */
    DRIVES("drives", "drive", Drive.class),
    /** Tubes. */
    TUBES("tubes", "tube", Tube.class),
    /** Coolants. */
    COOLANTS("coolants", "coolant", Coolant.class),
    /** Raised covers. */
    COVERS("covers", "cover", Cover.class),
    /** Grilles. */
    GRILLES("grilles", "grille", Grille.class),
    /** Screws. */
    SCREWS("screws", "screw", Screw.class),
    /** Fittings of the loop. */
    FITTINGS("fittings", "fitting", TubeFitting.class),
    /** Leads: extensions, splitters, hubs, adaptors. */
    LEADS("leads", "lead", Lead.class),
    /** One or more chassis. */
    CHASSIS("chassis", "chassis", Chassis.class),
    /** One brief. */
    BRIEF("brief", "brief", Brief.class),
    /** Published outlines and patterns. */
    STANDARDS("standards", "standards", Standards.class),
    /** The trade's allowances. */
    PRACTICE("practice", "practice", Practice.class),
    /** What an instrument said of lengths of the catalogue. */
    READINGS("readings", "reading", Reading.class),
    /** The catalogue's own line. */
    CATALOG("catalog", "catalog", CatalogHead.class);

    private static final String PREFIX = "loopwright/";
    private static final String VERSION = "/1";

    private final String word;
    private final String one;
    private final Class<? extends Record> record;

    FileKind(String word, String one, Class<? extends Record> record) {
        this.word = word;
        this.one = one;
        this.record = record;
    }

    /** The word in the schema line. */
    public String word() {
        return word;
    }

    /** What one item is called. */
    public String one() {
        return one;
    }

    /** The record of an item. */
    public Class<? extends Record> record() {
        return record;
    }

    /** The whole schema line. */
    public String schema() {
        return PREFIX + word + VERSION;
    }

    /** Whether the file has {@code items}; otherwise the record's fields stand beside the schema line. */
    public boolean isList() {
        return isPart() || this == READINGS;
    }

    /** Whether its items are parts or chassis: what a catalogue consists of. */
    public boolean isPart() {
        return Part.class.isAssignableFrom(record);
    }

    /** The kind of a schema line. */
    public static Optional<FileKind> find(String schema) {
        return Arrays.stream(values()).filter(k -> k.schema().equals(schema)).findFirst();
    }

    /** The kind of a part's class. */
    public static FileKind ofPart(Class<?> part) {
        return Arrays.stream(values())
                .filter(k -> k.record == part)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no file kind for " + part));
    }

    /** Every schema line. */
    public static List<String> schemas() {
        return Arrays.stream(values()).map(FileKind::schema).toList();
    }

    /** What a schema line may be, in words. */
    public static String schemaWords() {
        return PREFIX + "KIND" + VERSION + " with one of "
                + Arrays.stream(values()).map(FileKind::word).collect(Collectors.joining(", "));
    }
}
