/**
 * The verdict on a home, the rules a careful practitioner applies to it and to each candidate, what
 * they found, and the limits they keep.
 *
 * <pre>{@code
 * HomeLoad home = new HomeLoad(site);
 * VerdictKind kind = Verdict.of(home).kind();
 * for (Finding finding : RuleBook.USUAL.findings(home)) {
 *   System.out.println(finding.severity() + " " + words.finding(finding));
 * }
 * }</pre>
 *
 * <p>A finding holds its {@link io.github.brinewright.finding.Rule}: compare rules, never codes.
 * Rules of one's own join a {@link io.github.brinewright.finding.RuleBook}, dealers' limits are
 * {@link io.github.brinewright.finding.Limits}; a price list takes both.
 */
@NullMarked
package io.github.brinewright.finding;

import org.jspecify.annotations.NullMarked;
