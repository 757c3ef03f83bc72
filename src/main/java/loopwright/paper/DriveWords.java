package loopwright.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.answer.DrivePlaces;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.chassis.Place.Holds;

/** Places for drives in the builder's words. */
final class DriveWords {

    private DriveWords() {}

    /** What goes, what stays, what is made, what could be. */
    static String places(DrivePlaces places) {
        List<String> out = new ArrayList<>();
        if (!places.gone().isEmpty()) {
            out.add("takes with it " + counted(places.gone()));
        }
        if (!places.opened().isEmpty()) {
            out.add("makes " + titles(places.opened()));
        }
        out.add(places.left().isEmpty() ? "none as delivered stays" : "as delivered " + stay(places.left()));
        if (!places.possible().isEmpty()) {
            out.add("one more mod would make " + titles(places.possible()));
        }
        return String.join("; ", out);
    }

    /** In short: what goes with what is taken out, and how many are left. */
    static String shortly(DrivePlaces places, Chassis chassis) {
        Map<String, List<Place>> byBody = new LinkedHashMap<>();
        for (Place place : places.gone()) {
            byBody.computeIfAbsent(of(place, chassis), b -> new ArrayList<>()).add(place);
        }
        String gone = byBody.entrySet().stream()
                .map(e -> count(e.getValue()) + e.getKey())
                .collect(Collectors.joining(" and "));
        String made = places.opened().isEmpty() ? "" : "; " + count(places.opened()) + " made";
        String left = places.left().isEmpty() ? "no other place remains" : left(places.left());
        String possible = places.possible().isEmpty()
                ? ""
                : "; a further mod makes " + count(places.possible())
                        + (places.possible().size() == 1
                                ? " (" + places.possible().get(0).title() + ")"
                                : "");
        return "takes " + gone + " with it" + made + "; " + left + possible;
    }

    private static String left(List<Place> left) {
        return count(left) + (left.size() == 1 ? " remains (" + left.get(0).title() + ")" : " remain");
    }

    /** Of what it is a part, where that is known. */
    private static String of(Place place, Chassis chassis) {
        return chassis.inside().removables().stream()
                .filter(r -> place.inside().equals(Optional.of(r.id())))
                .map(r -> " of the " + r.title())
                .findFirst()
                .orElse("");
    }

    private static String stay(List<Place> left) {
        return titles(left) + (left.size() == 1 ? " stays" : " stay");
    }

    /** {@code two 3.5-inch places and one 2.5-inch place (drive tower, lower 3.5-inch place / ...)}. */
    private static String counted(List<Place> places) {
        return count(places) + " (" + titles(places) + ")";
    }

    private static String count(List<Place> places) {
        List<String> counts = new ArrayList<>();
        count(counts, places, Holds.D3_5, "3.5-inch");
        count(counts, places, Holds.D2_5, "2.5-inch");
        return String.join(" and ", counts);
    }

    private static void count(List<String> out, List<Place> places, Holds form, String word) {
        long count = places.stream().filter(p -> first(p) == form).count();
        if (count > 0) {
            out.add(number(count) + " " + word + (count == 1 ? " place" : " places"));
        }
    }

    private static String number(long count) {
        return count == 1 ? "one" : count == 2 ? "two" : Long.toString(count);
    }

    /** A place that takes both forms counts by the larger. */
    private static Holds first(Place place) {
        return place.holds().contains(Holds.D3_5) ? Holds.D3_5 : Holds.D2_5;
    }

    private static String titles(List<Place> places) {
        return places.stream().map(Place::title).collect(Collectors.joining(" / "));
    }

    /** The same for programs: ids. */
    static Map<String, Object> row(DrivePlaces places) {
        Map<String, Object> out = Json.object();
        out.put("gone", ids(places.gone()));
        out.put("left", ids(places.left()));
        out.put("opened", ids(places.opened()));
        out.put("possible", ids(places.possible()));
        return out;
    }

    private static List<String> ids(List<Place> places) {
        return places.stream().map(Place::id).toList();
    }
}
