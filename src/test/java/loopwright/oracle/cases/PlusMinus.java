package loopwright.oracle.cases;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import loopwright.catalog.Catalog;
import loopwright.catalog.part.Part;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.Standards;
import loopwright.quantity.Dimension;

/** Gives every dimension of a case a ± of its own, and says whether the case refuses tight places. Hundredths of a mm. */
final class PlusMinus {

    private static final List<Integer> SMALL = List.of(0, 0, 1, 2, 3, 7, 20, 50);
    private static final List<Integer> LARGE = List.of(60, 70, 85, 100, 101, 115, 130);

    private final SplittableRandom random;
    private final List<Integer> sizes;
    private final int gapHmm;

    PlusMinus(long seed) {
        this.random = new SplittableRandom(seed * 104_729 + 5);
        boolean refuses = random.nextInt(3) == 0;
        boolean large = random.nextInt(3) == 0;
        this.sizes = large ? LARGE : SMALL;
        this.gapHmm = !refuses ? 0 : large ? random.nextInt(200, 300) : 200;
    }

    boolean refusesTight() {
        return gapHmm > 0;
    }

    /** How far apart things are drawn, so that hundredths decide: 0 where tight places are allowed. */
    int gapHmm() {
        return gapHmm;
    }

    Catalog of(Catalog was) {
        TreeMap<String, Part> parts = new TreeMap<>();
        was.parts().forEach((id, part) -> parts.put(id, of(Part.class, part)));
        return new Catalog(
                was.version(),
                was.currency(),
                parts,
                of(Standards.class, was.standards()),
                of(Practice.class, was.practice()));
    }

    <T> T of(Class<T> kind, T value) {
        return kind.cast(again(value));
    }

    private Object again(Object value) {
        if (value instanceof Dimension d) {
            return d.isUnknown() ? d : new Dimension(d.valueHmm(), sizes.get(random.nextInt(sizes.size())), d.known());
        }
        if (value instanceof List<?> list) {
            List<Object> out = new ArrayList<>();
            list.forEach(each -> out.add(again(each)));
            return List.copyOf(out);
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(this::again);
        }
        return value instanceof Record record ? rebuilt(record) : value;
    }

    private Object rebuilt(Record record) {
        RecordComponent[] components = record.getClass().getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] values = new Object[components.length];
        try {
            for (int i = 0; i < components.length; i++) {
                types[i] = components[i].getType();
                values[i] = again(components[i].getAccessor().invoke(record));
            }
            Constructor<?> made = record.getClass().getDeclaredConstructor(types);
            return made.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot rebuild " + record.getClass(), e);
        }
    }
}
