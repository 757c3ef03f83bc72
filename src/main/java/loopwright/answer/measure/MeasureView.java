package loopwright.answer.measure;

import java.util.Optional;

/**
 * What is asked.
 *
 * @param key only about the layout with this key
 * @param top so many dimensions are shown, and of these it is found out exactly what hangs on them
 */
public record MeasureView(Optional<String> key, int top) {}
