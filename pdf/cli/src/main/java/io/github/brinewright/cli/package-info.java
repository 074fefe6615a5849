/**
 * The command line: reads options, calls the library, and words what went wrong. Whatever it does a
 * program can do by the library alone.
 *
 * <pre>{@code
 * int code = Main.commandLine().execute("propose", "job", "--all", "--out", "proposals");
 * }</pre>
 */
@NullMarked
package io.github.brinewright.cli;

import org.jspecify.annotations.NullMarked;
