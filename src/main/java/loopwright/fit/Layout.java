package loopwright.fit;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A chassis and, for each mount, nothing or a stack by its dimensions; at least one stack.
 *
 * @param chassis the chassis's id
 * @param stacks in the chassis's order of mounts
 */
public record Layout(String chassis, List<Stack> stacks) {

    /** A shape on a mount. */
    public record Stack(MountFrame frame, Shape shape) {}

    /** Letters of a key: 32 that are not easily taken for one another. */
    private static final String LETTERS = "23456789abcdefghjkmnpqrstuvwxyzi";

    /** Letters in half a key. */
    private static final int HALF = 5;

    /** Refuses a layout without a radiator. */
    public Layout {
        if (stacks.isEmpty()) {
            throw new IllegalArgumentException("a layout has at least one radiator");
        }
        stacks = List.copyOf(stacks);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Layout layout && hashCode() == layout.hashCode() && text().equals(layout.text());
    }

    @Override
    public int hashCode() {
        int hash = chassis.hashCode();
        for (Stack stack : stacks) {
            hash = 31 * hash + 31 * stack.frame().index() + stack.shape().hashCode();
        }
        return hash;
    }

    /** Everything by value: equal texts are equal layouts, whatever the catalogue's order. */
    public String text() {
        return stacks.stream()
                .map(s -> s.frame().mount().id() + ":" + s.shape().text())
                .collect(Collectors.joining(" | "));
    }

    /** What parts it takes on which mounts: layouts that differ in port ends or in the side fans are on share it. */
    public String partsText() {
        return stacks.stream()
                .map(s -> s.frame().mount().id() + ":" + s.shape().outline().text() + "/"
                        + s.shape().fanThickness().valueHmm() + "/"
                        + s.shape().arrangement().fanLayers())
                .collect(Collectors.joining(" | "));
    }

    /** A short printable key, the same for the same layout in every catalogue. */
    public String key() {
        return key(chassis + "\n" + text());
    }

    /** A short printable key of a text: ten letters, fifty bits of its SHA-256. */
    public static String key(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            StringBuilder out = new StringBuilder();
            for (int i = 0; i < 2 * HALF; i++) {
                out.append(i == HALF ? "-" : "").append(LETTERS.charAt(fiveBits(hash, i)));
            }
            return out.toString();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static int fiveBits(byte[] hash, int index) {
        int bits = 0;
        for (int b = 5 * index; b < 5 * index + 5; b++) {
            bits = bits << 1 | (hash[b / 8] >> (7 - b % 8) & 1);
        }
        return bits;
    }
}
