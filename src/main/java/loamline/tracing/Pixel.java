package loamline.tracing;

/**
 * One pixel of a picture.
 *
 * @param x column, counted from the left from 0
 * @param y row, counted from the top from 0
 */
public record Pixel(int x, int y) {}
