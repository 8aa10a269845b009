"""The test sheet of `fairdeal align`."""
