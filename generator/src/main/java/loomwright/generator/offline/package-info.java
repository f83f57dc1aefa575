/** What a browser needs to keep the site and run it without a network: the list of files with their hashes, the manifest, the icons. */
package loomwright.generator.offline;
