package loomwright.generator.build;

/** Takes the files of a finished site. */
public interface Output {

    /**
     * Takes a file.
     *
     * @param address where it goes, from the root of the site, with forward slashes
     */
    void put(String address, byte[] bytes);
}
