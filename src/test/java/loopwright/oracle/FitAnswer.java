package loopwright.oracle;

import java.util.SortedMap;
import java.util.SortedSet;

/**
 * What fits, as plain text, so that engines that share no code can be compared.
 *
 * @param needed layout text to its needed mod sets, each as ids of mods
 * @param unknown layout texts that would fit if unknown dimensions were what they count as
 */
public record FitAnswer(SortedMap<String, SortedSet<SortedSet<String>>> needed, SortedSet<String> unknown) {}
