package loopwright.paper;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a set of papers consists of: each file's name and the digest of what was written into it, SHA-256 of FIPS 180-4.
 *
 * <p>As text it has a line a file, sorted: 64 hexadecimal digits, two spaces, the name. {@code sha256sum --check} reads that.
 *
 * @param sums digests by name
 */
public record Manifest(SortedMap<String, String> sums) {

    /** The file it is written to; it does not list itself. */
    public static final String NAME = "papers.sha256";

    /** Only plain names of papers: a line with a way to elsewhere is none of ours. */
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  ([a-z0-9][a-z0-9-]*\\.[a-z0-9]+)");

    /** Copies. */
    public Manifest {
        sums = Collections.unmodifiableSortedMap(new TreeMap<>(sums));
    }

    /** Of files by name. */
    public static Manifest of(Map<String, byte[]> files) {
        SortedMap<String, String> out = new TreeMap<>();
        files.forEach((name, bytes) -> {
            if (!name.equals(NAME)) {
                out.put(name, sum(bytes));
            }
        });
        return new Manifest(out);
    }

    /** Of a text; lines that are none of ours are passed over. */
    public static Manifest read(String text) {
        SortedMap<String, String> out = new TreeMap<>();
        text.lines().forEach(line -> {
            Matcher read = LINE.matcher(line);
            if (read.matches()) {
                out.put(read.group(2), read.group(1));
            }
        });
        return new Manifest(out);
    }

    /** As it is written. */
    public byte[] bytes() {
        StringBuilder out = new StringBuilder();
        sums.forEach((name, sum) -> out.append(sum).append("  ").append(name).append('\n'));
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Whether a file of this name is listed with this content. */
    public boolean lists(String name, byte[] content) {
        return sum(content).equals(sums.get(name));
    }

    /** The digest of a content, in hexadecimal digits. */
    public static String sum(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
