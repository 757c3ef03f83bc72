package loopwright.catalog.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loopwright.catalog.read.Node.MapNode;

/** Notes fields that a record does not have, and which of its own fields was probably meant. */
final class UnknownFields {

    /** Endings people write where a field wants another unit; compared in small letters. */
    private static final Set<String> OTHER_UNITS = Set.of(
            "mm",
            "cm",
            "dm",
            "m",
            "um",
            "in",
            "inch",
            "inches",
            "ft",
            "w",
            "kw",
            "mw",
            "watt",
            "watts",
            "pa",
            "hpa",
            "kpa",
            "bar",
            "mbar",
            "psi",
            "mmh2o",
            "mm_h2o",
            "mh2o",
            "m_h2o",
            "l_per_min",
            "lpm",
            "l_min",
            "l_per_h",
            "lph",
            "gph",
            "gpm",
            "m3_per_h",
            "m3_h",
            "m3h",
            "m3_per_min",
            "cfm",
            "l_per_s",
            "ml",
            "l",
            "cl",
            "g",
            "kg",
            "mg",
            "lb",
            "lbs",
            "oz",
            "a",
            "ma",
            "amps",
            "k",
            "c",
            "f",
            "degc",
            "deg_c",
            "db",
            "dba",
            "db_a",
            "sone",
            "rpm",
            "gb",
            "mb",
            "tb",
            "eur",
            "euro",
            "euros",
            "usd",
            "cents",
            "min",
            "h",
            "hours",
            "minutes",
            "s",
            "d",
            "days",
            "weeks",
            "months",
            "percent",
            "pct",
            "k_per_w",
            "c_per_w",
            "w_per_k",
            "cm2",
            "mm2",
            "m2",
            "eur_per_h",
            "cents_per_h",
            "h_per_day",
            "cents_per_min");

    private final Notes notes;

    UnknownFields(Notes notes) {
        this.notes = notes;
    }

    /** Notes them; returns the fields they stood for, or their own names where that is unclear. */
    Set<String> note(List<Slot> slots, MapNode map, String path, Set<String> besides) {
        List<String> known = slots.stream().map(s -> s.name().text()).toList();
        Set<String> meant = new TreeSet<>();
        map.entries().forEach((field, entry) -> {
            if (known.contains(field) || besides.contains(field)) {
                return;
            }
            Optional<FieldName> sameStem = slots.stream()
                    .map(Slot::name)
                    .filter(name -> differsOnlyInUnit(field, name))
                    .findFirst();
            Optional<String> nearest = sameStem.map(FieldName::text).or(() -> Nearest.to(field, known));
            String hint = sameStem.map(n -> "Give it in " + n.unit() + " as " + n.text() + ".")
                    .or(() -> sayWhich(field, slots))
                    .orElse(nearest.map(n -> "Maybe " + n + "?").orElse(""));
            notes.add(
                    entry.keyAt(),
                    Notes.join(path, field),
                    "an unknown field",
                    known.isEmpty() ? "no fields" : String.join(", ", known),
                    hint);
            meant.add(nearest.orElse(field));
        });
        return meant;
    }

    /** A hint where several fields say more exactly what this one says: {@code share_percent} by mass or by volume. */
    private static Optional<String> sayWhich(String field, List<Slot> slots) {
        List<FieldName> exact = slots.stream()
                .map(Slot::name)
                .filter(name -> middle(field, name).isPresent())
                .toList();
        if (exact.size() < 2) {
            return Optional.empty();
        }
        return Optional.of("Say "
                + exact.stream().map(name -> middle(field, name).orElseThrow()).collect(Collectors.joining(" or "))
                + ": "
                + exact.stream().map(FieldName::text).collect(Collectors.joining(" or "))
                + ".");
    }

    /** What a name says between the stem and the unit of a field: {@code mass} in {@code share_mass_percent}. */
    private static Optional<String> middle(String field, FieldName name) {
        String end = "_" + name.unit();
        if (name.unit().isEmpty() || !field.endsWith(end)) {
            return Optional.empty();
        }
        String start = field.substring(0, field.length() - end.length()) + "_";
        return name.stem().startsWith(start) ? Optional.of(name.stem().substring(start.length())) : Optional.empty();
    }

    private static boolean differsOnlyInUnit(String field, FieldName name) {
        if (name.unit().isEmpty()) {
            return false;
        }
        if (field.equals(name.stem())) {
            return true;
        }
        return field.startsWith(name.stem() + "_")
                && OTHER_UNITS.contains(
                        field.substring(name.stem().length() + 1).toLowerCase(Locale.ROOT));
    }
}
