package loopwright.answer.measure;

import static loopwright.catalog.standard.Practice.Takes.DEPTH;
import static loopwright.catalog.standard.Practice.Takes.INSIDE;
import static loopwright.catalog.standard.Practice.Takes.OUTSIDE;
import static loopwright.catalog.standard.Practice.Takes.POSITION;

import java.util.List;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.catalog.standard.Practice.Takes;

/** Where on the machine a length is taken, from its path in the files; common practice, no source. */
final class Spots {

    private static final String SIZE = "(length|width|height)_mm";
    private static final String BOX = "boxes\\.(\\d+)\\.([xyz])_mm\\.(from|to)";

    /** The first that matches holds. */
    private static final List<Rule> RULES = List.of(
            rule(
                    "chassis: shell\\.interior\\.width_mm",
                    INSIDE,
                    "inside of the left wall to the inside of the right wall"),
            rule("chassis: shell\\.interior\\.depth_mm", INSIDE, "inside of the front to the inside of the rear"),
            rule("chassis: shell\\.interior\\.height_mm", INSIDE, "inside of the floor to the inside of the roof"),
            rule(
                    "chassis: inside\\.board\\.pose\\.corner\\.([xyz])_mm",
                    POSITION,
                    m -> wall(m.group(1))
                            + " to the corner of the board on its standoffs: its top face, the edge above the"
                            + " processor, the edge at the rear"),
            rule(
                    "chassis: inside\\.places\\.([^.]+)\\.pose\\.corner\\.([xyz])_mm",
                    POSITION,
                    m -> wall(m.group(2)) + " to the corner of the place " + m.group(1)),
            rule(
                    "chassis: inside\\.(?:obstructions|removables)\\.([^.]+)\\." + BOX,
                    POSITION,
                    m -> wall(m.group(3)) + " to " + face(m.group(3), m.group(4)) + " of " + m.group(1)
                            + box(m.group(2))),
            rule(
                    "chassis: mods\\.([^.]+)\\.effect\\.adds\\.([^.]+)\\." + BOX,
                    POSITION,
                    m -> wall(m.group(4)) + " to " + face(m.group(4), m.group(5)) + " of " + m.group(2) + " ("
                            + m.group(1) + ")" + box(m.group(3))),
            rule(
                    "chassis: mods\\.([^.]+)\\.effect\\.inserts\\..*",
                    OUTSIDE,
                    m -> "the sheet of the insert (" + m.group(1) + "), face to face"),
            rule(
                    "chassis: mods\\.([^.]+)\\.effect\\.covers\\..*(lengthwise|sideways)_mm",
                    POSITION,
                    m -> "inner face of the wall to the middle of the raised cover (" + m.group(1) + "), "
                            + m.group(2)),
            rule(
                    "chassis: (?:.*\\.)?(?:mounts\\.([^.]+)\\.)?seats?\\..*(lengthwise|sideways)_mm.*\\.(from|to)",
                    POSITION,
                    m -> "inner face of the wall to the " + (m.group(3).equals("from") ? "near" : "far")
                            + " end of the slot, " + m.group(2)),
            rule(
                    "chassis: mounts\\.([^.]+)\\.inset_mm",
                    DEPTH,
                    m -> "inner face of the " + m.group(1) + " panel's wall to the plane that its stack is screwed to"),
            rule(
                    "chassis: mounts\\.([^.]+)\\.gasket\\..*",
                    DEPTH,
                    m -> "the gasket at the mount " + m.group(1) + ", sheet to stack"),
            rule(
                    "chassis: mounts\\.([^.]+)\\.opening\\.outside_depth_mm",
                    DEPTH,
                    m -> "outside of the panel at the mount " + m.group(1) + " to what is in front of it"),
            rule("chassis: .*thickness_mm", OUTSIDE, "the sheet at an edge, face to face"),
            rule("radiator: body\\.thickness_mm", OUTSIDE, "over the radiator's flanges, face to face"),
            rule("radiator: body\\.width_mm", OUTSIDE, "across the radiator at its tanks, side to side"),
            rule(
                    "radiator: body\\.port_overhang_mm",
                    OUTSIDE,
                    "end of the last fan to the end of the tank with the ports"),
            rule(
                    "radiator: body\\.blank_overhang_mm",
                    OUTSIDE,
                    "end of the last fan to the end of the tank without ports"),
            rule("radiator: ports\\..*from_fan_area_mm", OUTSIDE, "end of the last fan to the middle of the port"),
            rule("radiator: ports\\..*aside_mm", OUTSIDE, "middle line of the radiator to the middle of the port"),
            rule("fan: frame\\.thickness_mm", OUTSIDE, "over the fan's frame at a corner, pads included"),
            rule("graphics card: body\\.length_mm", OUTSIDE, "the card over everything, bracket face to far end"),
            rule("graphics card: body\\.height_mm", OUTSIDE, "the card over everything, slot contacts to top edge"),
            rule("graphics card: body\\.thickness_mm", OUTSIDE, "the card over everything, back plate to block"),
            rule("memory: height_mm", OUTSIDE, "the module in its socket, face of the board to its top"),
            rule("block: body\\." + SIZE, OUTSIDE, m -> "the block over everything on its socket: its " + m.group(1)),
            rule(
                    "board: .*(length|width|height)_mm\\.(from|to)",
                    POSITION,
                    "edge or top face of the board to the component"),
            rule("board: .*", OUTSIDE, "on the board, edge to the middle of the socket or slot"),
            rule("supply: body\\.length_mm", OUTSIDE, "the supply, screw face to the face with the plugs"),
            rule("cover: body\\.inside_.*", INSIDE, "inside of the cover, face of the panel to its skin"),
            rule("cover: .*", OUTSIDE, "the cover over its outside"),
            rule("standards: boards\\..*", OUTSIDE, "the board over its edges"),
            rule("practice: room\\.board_thickness_mm", OUTSIDE, "the board at its edge, face to face"),
            rule(
                    "([a-z ]+): body\\." + SIZE,
                    OUTSIDE,
                    m -> "the " + m.group(1) + " over everything: its " + m.group(2)),
            rule("chassis: (.*)", POSITION, m -> "in the chassis: " + words(m.group(1))),
            rule("([a-z ]+): (.*)", OUTSIDE, m -> "on the " + m.group(1) + ": " + words(m.group(2))));

    private Spots() {}

    /**
     * Where to take a length, and what an instrument has to be for.
     *
     * @param takes what it has to be for
     * @param words never empty
     */
    record Spot(Takes takes, String words) {}

    private record Rule(Pattern pattern, Takes takes, Function<MatchResult, String> words) {}

    private static Rule rule(String pattern, Takes takes, String words) {
        return rule(pattern, takes, m -> words);
    }

    private static Rule rule(String pattern, Takes takes, Function<MatchResult, String> words) {
        return new Rule(Pattern.compile(pattern), takes, words);
    }

    /**
     * The spot of a length.
     *
     * @param kind of the item: {@code chassis}, {@code radiator}, {@code practice}, …
     */
    static Spot of(String kind, String path) {
        for (Rule rule : RULES) {
            Matcher matcher = rule.pattern().matcher(kind + ": " + path);
            if (matcher.matches()) {
                return new Spot(rule.takes(), rule.words().apply(matcher));
            }
        }
        return new Spot(POSITION, words(path));
    }

    private static String wall(String axis) {
        return switch (axis) {
            case "x" -> "inner face of the left wall";
            case "y" -> "inner face of the front";
            default -> "inner face of the floor";
        };
    }

    private static String face(String axis, String end) {
        boolean low = end.equals("from");
        return switch (axis) {
            case "x" -> low ? "the left face" : "the right face";
            case "y" -> low ? "the front face" : "the rear face";
            default -> low ? "the lower face" : "the upper face";
        };
    }

    private static String box(String number) {
        return number.equals("1") ? "" : ", box " + number;
    }

    private static String words(String path) {
        return path.replaceAll("_mm\\b", "").replace('.', ' ').replace('_', ' ');
    }
}
