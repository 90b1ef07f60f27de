# SPDX-License-Identifier: MIT
"""The unit of a name by its suffix: the one place where that table stands."""

SUFFIXES = {
    "pa": "Pa",
    "k": "K",
    "m3": "m3",
    "m3_s": "m3/s",
    "kg_s": "kg/s",
    "kg": "kg",
    "kg_m3": "kg/m3",
    "kg_m": "kg/m",
    "m": "m",
    "m2": "m2",
    "m_s": "m/s",
    "s": "s",
    "w": "W",
    "j": "J",
    "j_kg": "J/kg",
    "j_kg_k": "J/(kg K)",
    "j_k": "J/K",
    "j_m3": "J/m3",
    "n": "N",
    "n_m": "N/m",
    "nm": "N m",
    "v": "V",
    "a": "A",
    "va": "VA",
    "f": "F",
    "ohm": "ohm",
    "ohm_m": "ohm/m",
    "ohmm": "ohm m",
    "hz": "Hz",
    "rev_s": "rev/s",
    "rad": "rad",
    "rad_s": "rad/s",
    "w_k": "W/K",
    "w_m_k": "W/(m K)",
    "pa_s": "Pa/s",
    "pas": "Pa s",
    "m2_s": "m2/s",
    "m3_s_pa": "m3/(s Pa)",
    "m3_kg": "m3/kg",
    "kg_s_pa": "kg/(s Pa)",
    "1_k": "1/K",
    "1_s": "1/s",
    "k_s": "K/s",
    "k_pa": "K/Pa",
    "1_pa": "1/Pa",
    "1_j": "1/J",
    "kg_j": "kg/J",
    "1_m3": "1/m3",
    "mol_m3": "mol/m3",
    "m3_mol": "m3/mol",
    "m6_mol2": "m6/mol2",
    "j_mol": "J/mol",
}

# Words that name a dimensional quantity: a name that ends with one of them has
# lost its unit.
DIMENSIONAL = {
    "pressure", "temperature", "volume", "flow", "mass", "density", "length", "area", "speed", "time", "duration",
    "power", "energy", "work", "force", "torque", "voltage", "current", "capacitance", "resistance", "frequency",
    "angle", "diameter", "bore", "stroke", "radius", "distance", "altitude", "height", "width", "thickness",
}


def unit_of(name):
    """Coherent SI unit of a name, "1" for a pure number, None where a unit is missing."""
    parts = name.split("_")
    for take in (3, 2, 1):
        suffix = "_".join(parts[-take:])
        if len(parts) > take and suffix in SUFFIXES:
            return SUFFIXES[suffix]
    if len(parts) == 1 and name in SUFFIXES and name not in ("k", "n", "m", "a", "s", "f", "v", "w", "j"):
        return SUFFIXES[name]
    return None if parts[-1] in DIMENSIONAL else "1"
