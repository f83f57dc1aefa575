/** Markdown to HTML: CommonMark with tables, values by name and fenced blocks. The only package that knows flexmark. */
package loomwright.generator.markdown;
