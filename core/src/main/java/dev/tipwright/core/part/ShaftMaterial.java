package dev.tipwright.core.part;

/** What a shaft is made of, as far as cautions and cutting go. */
public enum ShaftMaterial {
    /** Fibre and resin: dust, and a tip that must not be crushed. */
    COMPOSITE,
    /** Steel. */
    STEEL
}
