package loopwright.catalog.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.catalog.read.FileKind;

/** The short word for all items of a kind. */
enum KindWord {
    /** Radiators. */
    RADIATOR(FileKind.RADIATORS, "radiators"),
    /** Fans. */
    FAN(FileKind.FANS, "fans"),
    /** Graphics cards. */
    CARD(FileKind.GRAPHICS_CARDS, "graphics cards"),
    /** Memory kits. */
    MEMORY(FileKind.MEMORY, "memory kits"),
    /** Processor blocks. */
    BLOCK(FileKind.BLOCKS, "processor blocks"),
    /** Power supplies. */
    SUPPLY(FileKind.SUPPLIES, "supplies"),
    /** Drives. */
    DRIVE(FileKind.DRIVES, "drives"),
    /** Pumps. */
    PUMP(FileKind.PUMPS, "pumps"),
    /** Reservoirs. */
    RESERVOIR(FileKind.RESERVOIRS, "reservoirs"),
    /** Boards. */
    BOARD(FileKind.BOARDS, "boards"),
    /** Raised covers. */
    COVER(FileKind.COVERS, "covers"),
    /** Chassis. */
    CHASSIS(FileKind.CHASSIS, "chassis");

    private final FileKind kind;
    private final String many;

    KindWord(FileKind kind, String many) {
        this.kind = kind;
        this.many = many;
    }

    FileKind kind() {
        return kind;
    }

    /** What several of them are called. */
    String many() {
        return many;
    }

    static Optional<KindWord> find(String word) {
        return Arrays.stream(values()).filter(k -> k.word().equals(word)).findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(KindWord::word).toList();
    }

    private String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
