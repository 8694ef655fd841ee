/** Somebody else's module: what it names brings core along. */
module shop.bench {
    requires dev.tipwright.fitcheck;
    requires dev.tipwright.swingweight;
}
