package loopwright.catalog.read;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;

/** A short name for the exact content of some files. */
public final class Digest {

    /** Hex digits shown: enough that two catalogues of one workshop never share them by chance. */
    private static final int DIGITS = 12;

    private Digest() {}

    /** The first {@value #DIGITS} hex digits of SHA-256 over names and texts, in the order of the names. */
    public static String of(SortedMap<String, String> textByName) {
        MessageDigest sha;
        try {
            sha = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
        for (Map.Entry<String, String> file : textByName.entrySet()) {
            byte[] bytes = file.getValue().getBytes(StandardCharsets.UTF_8);
            sha.update((file.getKey() + "\n" + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
            sha.update(bytes);
        }
        return HexFormat.of().formatHex(sha.digest()).substring(0, DIGITS);
    }
}
