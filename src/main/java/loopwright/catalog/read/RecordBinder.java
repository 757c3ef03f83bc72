package loopwright.catalog.read;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import loopwright.catalog.read.Node.ListNode;
import loopwright.catalog.read.Node.MapNode;
import loopwright.catalog.read.Node.Scalar;

/**
 * Builds records from maps, field by field, and notes every problem on the way instead of stopping at the first.
 *
 * <p>A value of the wrong kind is never turned into the right one.
 */
public final class RecordBinder {

    private final Notes notes;

    /** A binder that notes problems about one item. */
    public RecordBinder(Subject subject, Problems problems) {
        this.notes = new Notes(subject, problems);
    }

    /**
     * The record that a map holds; nothing if anything in it is wrong.
     *
     * @param besides fields of the map that are not the record's
     */
    public <R> Optional<R> bind(Class<R> type, MapNode map, Set<String> besides) {
        return record(type, map, "", besides).map(type::cast);
    }

    private Optional<Object> record(Class<?> type, MapNode map, String path, Set<String> besides) {
        List<Slot> slots = Slot.allOf(type);
        Set<String> meant = new UnknownFields(notes).note(slots, map, path, besides);
        List<Object> arguments = new ArrayList<>();
        boolean sound = meant.isEmpty();
        for (Slot slot : slots) {
            String field = slot.name().text();
            Optional<Object> value = map.find(field)
                    .map(node -> value(slot, node, Notes.join(path, field)))
                    .orElseGet(() -> absent(slot, map, Notes.join(path, field), meant.contains(field)));
            value.ifPresent(arguments::add);
            sound &= value.isPresent();
        }
        return sound ? made(type, arguments, map, path) : Optional.empty();
    }

    private Optional<Object> absent(Slot slot, MapNode map, String path, boolean mistyped) {
        if (slot.mayBeAbsent()) {
            return nothing(slot);
        }
        if (!mistyped) {
            notes.add(map.at(), path, "nothing", Allowed.words(slot), "The field is missing.");
        }
        return Optional.empty();
    }

    private Optional<Object> nothing(Slot slot) {
        Class<?> raw = slot.raw();
        if (raw == List.class) {
            return Optional.of(List.of());
        }
        if (raw == Optional.class) {
            return Optional.of(Optional.empty());
        }
        if (raw == boolean.class) {
            return Optional.of(false);
        }
        return record(raw, new MapNode(Place.START, java.util.Map.of()), "", Set.of());
    }

    private Optional<Object> value(Slot slot, Node node, String path) {
        Class<?> raw = slot.raw();
        if (raw == Optional.class) {
            return value(slot.held(), node, path).map(Optional::of);
        }
        if (raw == List.class) {
            return list(slot.held(), node, path);
        }
        if (WrittenShort.kinds().contains(raw)) {
            return new WrittenShort(notes).value(slot, node, path);
        }
        if (raw.isRecord()) {
            return node instanceof MapNode map
                    ? record(raw, map, path, Set.of())
                    : notes.wrong(node, path, node.words(), Allowed.words(slot), "");
        }
        if (raw == String.class || raw == boolean.class || raw.isEnum()) {
            return word(slot, node, path);
        }
        return new Numbers(notes).value(slot, node, path);
    }

    private Optional<Object> list(Slot held, Node node, String path) {
        if (!(node instanceof ListNode list)) {
            return notes.wrong(node, path, node.words(), "a list", "");
        }
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
            value(held, list.items().get(i), path + "[" + i + "]").ifPresent(values::add);
        }
        return values.size() == list.items().size() ? Optional.of(List.copyOf(values)) : Optional.empty();
    }

    private Optional<Object> word(Slot slot, Node node, String path) {
        Class<?> raw = slot.raw();
        if (node instanceof Scalar s && s.kind() == Scalar.Kind.TRUTH && raw == boolean.class) {
            return Optional.of(Boolean.parseBoolean(s.text()));
        }
        if (node instanceof Scalar s && s.kind() == Scalar.Kind.TEXT && raw != boolean.class) {
            return raw == String.class ? text(s, path) : choice(slot, s, path);
        }
        boolean unquoted = raw == String.class && node instanceof Scalar s && s.kind() != Scalar.Kind.NOTHING;
        return notes.wrong(node, path, node.words(), Allowed.words(slot), unquoted ? "Put it in quotes." : "");
    }

    private Optional<Object> text(Scalar scalar, String path) {
        if (scalar.text().isBlank()) {
            return notes.wrong(scalar, path, "an empty text", "a text", "");
        }
        OptionalInt unseen =
                scalar.text().codePoints().filter(RecordBinder::isUnseen).findFirst();
        if (unseen.isPresent()) {
            String found = String.format(Locale.ROOT, "the character U+%04X", unseen.getAsInt());
            return notes.wrong(scalar, path, found, "one line of characters that can be seen", "");
        }
        return Optional.of(scalar.text());
    }

    /** Characters that steer a terminal, break a line or turn the reading direction: a title could forge an answer. */
    private static boolean isUnseen(int codePoint) {
        int type = Character.getType(codePoint);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || type == Character.SURROGATE;
    }

    private Optional<Object> choice(Slot slot, Scalar scalar, String path) {
        for (Object constant : slot.raw().getEnumConstants()) {
            if (ChoiceName.of((Enum<?>) constant).equals(scalar.text())) {
                return Optional.of(constant);
            }
        }
        String hint = Nearest.hint(scalar.text(), Allowed.choices(slot.raw()));
        return notes.wrong(scalar, path, scalar.words(), Allowed.words(slot), hint);
    }

    private Optional<Object> made(Class<?> type, List<Object> arguments, MapNode map, String path) {
        Class<?>[] types = Slot.allOf(type).stream().map(Slot::raw).toArray(Class<?>[]::new);
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            return Optional.of(constructor.newInstance(arguments.toArray()));
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException cause) {
                return notes.wrong(map, path, "values that do not go together", String.valueOf(cause.getMessage()), "");
            }
            throw new IllegalStateException("the record " + type.getName() + " could not be made", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the record " + type.getName() + " could not be made", e);
        }
    }
}
