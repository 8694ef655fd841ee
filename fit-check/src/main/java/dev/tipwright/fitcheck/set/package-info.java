/**
 * A set of tips and bores, not one: which tip goes to which bore, and which head a shaft that was cut or sanded wrong can still serve.
 *
 * <p><img src="{@docRoot}/resources/pairs.svg" width="860"
 *     alt="Three tips, three bores and the structure each pair takes off; two pairs give no fit, and the pairing of
 *     least sum is boxed.">
 */
package dev.tipwright.fitcheck.set;
