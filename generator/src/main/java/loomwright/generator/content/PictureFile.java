package loomwright.generator.content;

/**
 * A photo of the content.
 *
 * @param name its file, such as {@code bench.jpg}
 * @param shown the path of the file in messages
 * @param bytes what it holds
 * @param width in pixels
 * @param height in pixels
 */
public record PictureFile(String name, String shown, byte[] bytes, int width, int height) {}
