// Nothing: the target exists for its precompiled header.
