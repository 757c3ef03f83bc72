package loopwright.catalog.read;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;

/**
 * What a record wants in one place: the type, the name its file uses, and the range of its numbers.
 *
 * @param type as declared, with what lists and optionals hold
 */
public record Slot(Type type, FieldName name, Range range) {

    /** Looked up once a record: annotations and generic types are slow to read. */
    private static final ClassValue<List<Slot>> OF_RECORD = new ClassValue<>() {
        @Override
        protected List<Slot> computeValue(Class<?> record) {
            return Arrays.stream(record.getRecordComponents()).map(Slot::of).toList();
        }
    };

    /** The slot of a record's component. */
    public static Slot of(RecordComponent component) {
        FieldName name = FieldName.of(component.getName());
        Limits limits = component.getAnnotation(Limits.class);
        Range usual = UnitLimits.of(name.unit());
        Range range = limits == null ? usual : new Range(limits.min(), limits.max(), usual.hint());
        return new Slot(component.getGenericType(), name, range);
    }

    /** The slots of a record, in its order. */
    public static List<Slot> allOf(Class<?> record) {
        return OF_RECORD.get(record);
    }

    /** The class, without what it holds. */
    public Class<?> raw() {
        return (Class<?>) (type instanceof ParameterizedType p ? p.getRawType() : type);
    }

    /** What a list or an optional holds, with the same name and range. */
    public Slot held() {
        return new Slot(((ParameterizedType) type).getActualTypeArguments()[0], name, range);
    }

    /** Whether the field may be left out: lists, optionals, truth values, and records of nothing else. */
    public boolean mayBeAbsent() {
        Class<?> raw = raw();
        if (raw == List.class || raw == Optional.class || raw == boolean.class) {
            return true;
        }
        return isPlainRecord() && allOf(raw).stream().allMatch(Slot::mayBeAbsent);
    }

    /** Whether it is a record written as a map of its components. */
    public boolean isPlainRecord() {
        return raw().isRecord() && !WrittenShort.kinds().contains(raw());
    }
}
