package loopwright.catalog.measure;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Span;
import loopwright.catalog.read.Slot;
import loopwright.quantity.Dimension;

/** Walks the fields of an item's record in the order of its components and gathers its lengths. */
final class RecordWalk {

    private final String id;
    private final List<Length> lengths = new ArrayList<>();
    private final Set<String> fields = new TreeSet<>();

    private RecordWalk(String id) {
        this.id = id;
    }

    /** The walk through an item. */
    static RecordWalk through(String id, Record item) {
        RecordWalk walk = new RecordWalk(id);
        walk.record(item, "");
        return walk;
    }

    /** Every length, in the order of the records' components. */
    List<Length> lengths() {
        return List.copyOf(lengths);
    }

    /** The paths of everything that is no length. */
    Set<String> otherFields() {
        return Set.copyOf(fields);
    }

    private void record(Record record, String path) {
        List<Slot> slots = Slot.allOf(record.getClass());
        RecordComponent[] components = record.getClass().getRecordComponents();
        for (int i = 0; i < components.length; i++) {
            Slot slot = slots.get(i);
            value(
                    slot,
                    read(record, components[i]),
                    path.isEmpty()
                            ? slot.name().text()
                            : path + "." + slot.name().text());
        }
    }

    private void value(Slot slot, Object value, String path) {
        if (value instanceof Dimension dimension) {
            lengths.add(new Length(id, path, dimension, slot.range()));
            return;
        }
        if (value instanceof Optional<?> held) {
            held.ifPresent(h -> value(slot.held(), h, path));
            return;
        }
        fields.add(path);
        if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                value(slot.held(), list.get(i), path + "." + step(list.get(i), i + 1));
            }
        } else if (value instanceof Span || (value instanceof Record && !(value instanceof Pattern))) {
            record((Record) value, path);
        }
    }

    /** How an element of a list is called: by its id, if it has one. */
    private static String step(Object element, int number) {
        if (element instanceof Record record) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                if (component.getName().equals("id") && read(record, component) instanceof String id) {
                    return id;
                }
            }
        }
        return Integer.toString(number);
    }

    private static Object read(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the record " + record.getClass().getName() + " cannot be read", e);
        }
    }
}
