package loopwright.loop.material;

/**
 * What a rule says of a loop.
 *
 * @param rule its id, stable
 * @param sentence with the parts and figures named
 * @param source where the rule comes from
 */
public record Finding(String rule, MaterialVerdict verdict, String sentence, String source) {}
