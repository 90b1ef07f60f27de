/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_UNITS_H
#define FREEAIR_UNITS_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup units Units
 * The units of the trade by the symbols that people write. The library computes
 * in coherent SI only; these functions stand at its door.
 *
 * A symbol is read in its exact spelling; trade symbols such as psi, cfm or hp
 * are also read in any case, SI symbols never where the case carries meaning
 * (mW and MW, mPa and MPa). UTF-8 signs for micro, degree, ohm, squared, cubed,
 * dot and prime are understood. A unit that belongs to another kind of quantity
 * is refused, torque and energy included.
 *
 * Some symbols have two readings: F is farad and degree Fahrenheit, lb a mass
 * and a force. Where the other unit settles it (F to K) both work; where nothing
 * does, the first reading in the list counts (farad, mass).
 *
 * A pressure symbol that says gauge (psig, barg, kPag, inHg vac) has the size of
 * its sibling but its own zero: only a barometer makes it absolute. A flow symbol
 * that names a reference state (scfm, Nm3/h, NL/min) is no unit and is refused
 * with FREEAIR_ERR_UNSUPPORTED; the reference topic converts such flows. The
 * units acfm and icfm have the size of cfm: which foot of air is meant is, again,
 * a matter of the reference topic.
 * @{
 */

/** Value in coherent SI of a value in a unit.
 *
 * Model: si = zero + value x factor, the factor exact by definition of the unit
 * wherever it has an exact one. Temperatures are readings of a scale: 20 degC is
 * 293.15 K. A gauge pressure stays a gauge pressure, in pascal: ask
 * freeair_units_is_gauge() before you use it as an absolute one.
 *
 * @param[in]  value  Value in the unit. @unit{any} @range{[-1e100;1e100]}
 * @param[in]  symbol Symbol of the unit, such as "psi".
 * @param[out] si     Value in the coherent SI unit that freeair_units_si_symbol() names. @unit{any}
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        symbol or si is null
 * @retval FREEAIR_ERR_DOMAIN      value is outside its range, or a temperature below absolute zero
 * @retval FREEAIR_ERR_NOT_FOUND   the symbol is not known
 * @retval FREEAIR_ERR_UNSUPPORTED the symbol names a flow at a reference state
 * @source{NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO 80000}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_units_si_from(double value, const char *symbol, double *si);

/** Value in a unit of a value in coherent SI.
 *
 * Model: inverse of freeair_units_si_from().
 *
 * @param[in]  si     Value in the unit that freeair_units_si_symbol() names. @unit{any} @range{[-1e100;1e100]}
 * @param[in]  symbol Symbol of the unit, such as "psi".
 * @param[out] value  Value in the unit. @unit{any}
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        symbol or value is null
 * @retval FREEAIR_ERR_DOMAIN      si is outside its range, or a temperature below absolute zero
 * @retval FREEAIR_ERR_NOT_FOUND   the symbol is not known
 * @retval FREEAIR_ERR_UNSUPPORTED the symbol names a flow at a reference state
 * @source{NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO 80000}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_units_from_si(double si, const char *symbol, double *value);

/** Value in one unit of a value in another.
 *
 * Model: through coherent SI. Temperatures are readings of a scale. A gauge
 * pressure converts to gauge pressures only.
 *
 * @param[in]  value     Value in the first unit. @unit{any} @range{[-1e100;1e100]}
 * @param[in]  from      Symbol of the first unit.
 * @param[in]  to        Symbol of the second unit.
 * @param[out] converted Value in the second unit. @unit{any}
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        from, to or converted is null
 * @retval FREEAIR_ERR_DOMAIN      value is outside its range, or a temperature below absolute zero
 * @retval FREEAIR_ERR_NOT_FOUND   a symbol is not known
 * @retval FREEAIR_ERR_DIMENSION   the units measure different kinds of quantity, or one is gauge and the other not
 * @retval FREEAIR_ERR_UNSUPPORTED a symbol names a flow at a reference state
 * @source{NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, Appendix B; ISO 80000}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_units_convert(double value, const char *from, const char *to, double *converted);

/** Difference in one unit of a difference in another.
 *
 * Model: as freeair_units_convert(), but scales are compared by the size of
 * their degrees alone: a difference of 1 degC is one of 1 K and of 1.8 degF. A
 * difference between two gauge pressures is the same as that between the two
 * absolute ones, so here gauge and absolute mix.
 *
 * @param[in]  value     Difference in the first unit. @unit{any} @range{[-1e100;1e100]}
 * @param[in]  from      Symbol of the first unit.
 * @param[in]  to        Symbol of the second unit.
 * @param[out] converted Difference in the second unit. @unit{any}
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        from, to or converted is null
 * @retval FREEAIR_ERR_DOMAIN      value is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND   a symbol is not known
 * @retval FREEAIR_ERR_DIMENSION   the units measure different kinds of quantity
 * @retval FREEAIR_ERR_UNSUPPORTED a symbol names a flow at a reference state
 * @source{NIST Special Publication 811, 2008 edition, Guide for the Use of the SI, 4.2.1.1 and Appendix B}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_units_convert_difference(double value, const char *from, const char *to,
                                                     double *converted);

/** Absolute pressure of a gauge reading.
 *
 * Model: p = gauge + barometric. The barometer of the site, not of the sea: at
 * 1500 m it reads about 85 kPa (freeair_atmosphere_pressure_from_altitude()).
 *
 * @param[in]  gauge_pa      Gauge pressure. @range{[-200000;1e9]}
 * @param[in]  barometric_pa Pressure of the surrounding air, absolute. @range{[10000;200000]}
 * @param[out] p_pa          Pressure, absolute.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        p_pa is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the gauge reading lies below perfect vacuum at this barometer
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_units_absolute_from_gauge(double gauge_pa, double barometric_pa, double *p_pa);

/** Gauge reading of an absolute pressure.
 *
 * Model: gauge = p - barometric; negative below the barometer.
 *
 * @param[in]  p_pa          Pressure, absolute. @range{[0;1e9]}
 * @param[in]  barometric_pa Pressure of the surrounding air, absolute. @range{[10000;200000]}
 * @param[out] gauge_pa      Gauge pressure.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   gauge_pa is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_units_gauge_from_absolute(double p_pa, double barometric_pa, double *gauge_pa);

/** Whether a symbol means a pressure above that of the surrounding air.
 *
 * Model: table look-up. Symbols that say so: psig, barg, kPag, kgf/cm2g, inHg
 * vac and their spellings. A plain psi or bar says neither; here it is absolute.
 *
 * @param[in]  symbol Symbol of a unit.
 * @param[out] gauge  1 for a gauge pressure, 0 for every other unit.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        symbol or gauge is null
 * @retval FREEAIR_ERR_NOT_FOUND   the symbol is not known
 * @retval FREEAIR_ERR_UNSUPPORTED the symbol names a flow at a reference state
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_units_is_gauge(const char *symbol, int32_t *gauge);

/** Symbol of the coherent SI unit of the quantity that a unit measures.
 *
 * Model: table look-up; "psi" gives "Pa", "degF" gives "K", "%" gives "1".
 *
 * @param[in] symbol Symbol of a unit.
 * @return Static string, never null; an empty string when symbol is null or not known.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_units_si_symbol(const char *symbol);

/** Number of units in the table.
 *
 * Model: count of rows; a symbol with two readings has two.
 *
 * @return Number of units.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API size_t freeair_units_count(void);

/** Symbol of a unit in the table, in ASCII.
 *
 * Model: table look-up.
 *
 * @param[in] i Position in the table, from 0. @range{[0;inf)}
 * @return Static string, never null; an empty string beyond the end of the table.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_units_symbol_at(size_t i);

/** English name of a unit in the table.
 *
 * Model: table look-up.
 *
 * @param[in] i Position in the table, from 0. @range{[0;inf)}
 * @return Static string, never null; an empty string beyond the end of the table.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_units_name_at(size_t i);

/** Symbol of the coherent SI unit of the quantity that a unit in the table measures.
 *
 * Model: table look-up.
 *
 * @param[in] i Position in the table, from 0. @range{[0;inf)}
 * @return Static string, never null; an empty string beyond the end of the table.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_units_si_symbol_at(size_t i);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
