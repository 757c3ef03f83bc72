package loopwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A small reader of DXF, release 12: written from the reference's list of group codes, knows nothing of our writer.
 *
 * @param layers names of the layer table
 * @param entities in the order of the file; a polyline's vertices are entities of their own
 */
record DxfEntities(List<String> layers, List<Entity> entities) {

    /** One pair of the file. */
    record Pair(int code, String value) {}

    /** What stands between two pairs of code 0. */
    record Entity(String kind, List<Pair> pairs) {
        String text(int code) {
            return pairs.stream()
                    .filter(p -> p.code() == code)
                    .findFirst()
                    .orElseThrow()
                    .value();
        }

        double number(int code) {
            return Double.parseDouble(text(code));
        }

        boolean has(int code) {
            return pairs.stream().anyMatch(p -> p.code() == code);
        }
    }

    static DxfEntities read(String file) {
        List<String> lines = file.lines().toList();
        if (lines.size() % 2 != 0) {
            throw new IllegalArgumentException("a line without its pair");
        }
        List<String> layers = new ArrayList<>();
        List<Entity> entities = new ArrayList<>();
        String section = "";
        List<Pair> open = new ArrayList<>();
        for (int i = 0; i < lines.size(); i += 2) {
            Pair pair = new Pair(Integer.parseInt(lines.get(i).strip()), lines.get(i + 1));
            if (pair.code() != 0) {
                open.add(pair);
                continue;
            }
            section = close(section, open, layers, entities);
            open = new ArrayList<>(List.of(pair));
        }
        if (!open.equals(List.of(new Pair(0, "EOF")))) {
            throw new IllegalArgumentException("the file ends in " + open);
        }
        return new DxfEntities(layers, entities);
    }

    private static String close(String section, List<Pair> open, List<String> layers, List<Entity> entities) {
        String kind = open.stream()
                .filter(p -> p.code() == 0)
                .findFirst()
                .map(Pair::value)
                .orElse("");
        Entity entity = new Entity(kind, List.copyOf(open));
        if (kind.equals("SECTION")) {
            return entity.text(2);
        }
        if (kind.equals("ENDSEC")) {
            return "";
        }
        if (section.equals("TABLES") && kind.equals("LAYER")) {
            layers.add(entity.text(2));
        } else if (section.equals("ENTITIES")) {
            entities.add(entity);
        }
        return section;
    }
}
