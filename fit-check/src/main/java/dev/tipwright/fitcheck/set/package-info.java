/**
 * A set of tips and bores, not one: which tip goes to which bore, and which head a shaft that was cut or sanded wrong can still serve.
 *
 * <pre>
 *            bore 7   bore 8   bore 9              structure to take off, mm3; - where the pair gives no fit
 *   tip A   [  41        -       58   ]
 *   tip B   [  39       44       55   ]   ->   A to 7, B to 9, C to 8
 *   tip C   [  40       42        -   ]
 * </pre>
 */
package dev.tipwright.fitcheck.set;
