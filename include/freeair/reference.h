/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_REFERENCE_H
#define FREEAIR_REFERENCE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup reference Reference states
 * Which cubic foot? A flow of air given as a volume says nothing before its
 * pressure, temperature and humidity are named: 100 m3/h normal are 109 m3/h at
 * the standard inlet of ISO 1217. Here are the states that standards and the
 * trade use, and the conversion of a flow from any state to any other.
 *
 * Two flows are the same here when they carry the same mass of dry air a second:
 * water comes as vapour and leaves as condensate. Where a contract counts all gas
 * instead, set both relative humidities to 0.
 *
 * Air and vapour are ideal gases here. Near 1 bar real air is denser by 0.06 % at
 * 0 degC, 0.04 % at 20 degC and 0.01 % at 60 degC; in a ratio of two flows most of
 * that cancels. Relative humidity is over liquid water at every temperature, as
 * hygrometers and weather services give it.
 * @{
 */

/** Reference states, numbered from 1 without a gap. 14.696 psia is one atmosphere.
 * @since 0.1
 */
enum freeair_reference_state {
  FREEAIR_REFERENCE_ISO_1217 = 1,       /**< 1 bar, 20 degC, dry: standard inlet of displacement compressors. */
  FREEAIR_REFERENCE_ISO_8778 = 2,       /**< 1 bar, 20 degC, 65 %: standard reference atmosphere of pneumatics, ANR. */
  FREEAIR_REFERENCE_DIN_1343 = 3,       /**< 1 atm, 0 degC, dry: normal state, as in Nm3. */
  FREEAIR_REFERENCE_ISO_13443 = 4,      /**< 1 atm, 15 degC, dry: standard state of the gas trade, as in Sm3. */
  FREEAIR_REFERENCE_ISO_2533 = 5,       /**< 1 atm, 15 degC, dry: standard atmosphere at sea level. */
  FREEAIR_REFERENCE_SCFM_60F = 6,       /**< 14.696 psia, 60 degF, dry: standard cubic foot of the gas trade. */
  FREEAIR_REFERENCE_SCFM_68F = 7,       /**< 14.5 psia, 68 degF, dry: standard cubic foot of the compressor trade. */
  FREEAIR_REFERENCE_SCFM_68F_36RH = 8,  /**< 14.7 psia, 68 degF, 36 %: standard air of older test codes. */
  FREEAIR_REFERENCE_SCFM_70F = 9,       /**< 14.696 psia, 70 degF, dry: standard cubic foot of fans and flow meters. */
  FREEAIR_REFERENCE_NTP = 10,           /**< 1 atm, 20 degC, dry: normal temperature and pressure. */
  FREEAIR_REFERENCE_STP = 11            /**< 1 bar, 0 degC, dry: standard temperature and pressure since 1982. */
};

/** Pressure, temperature and humidity of a reference state.
 *
 * Model: table look-up.
 *
 * @param[in]  state             A reference state. @choice{freeair_reference_state}
 * @param[out] p_pa              Pressure, absolute.
 * @param[out] t_k               Temperature.
 * @param[out] relative_humidity Relative humidity, 0 to 1.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      an output is null
 * @retval FREEAIR_ERR_NOT_FOUND there is no such state
 * @source{ISO 1217:2009; ISO 8778:2003; DIN 1343:1990; ISO 13443:1996; ISO 2533:1975; common practice for the rest}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_reference_conditions(int32_t state, double *p_pa, double *t_k, double *relative_humidity);

/** Name of a reference state, such as "FREEAIR_REFERENCE_ISO_1217".
 *
 * Model: table look-up.
 *
 * @param[in] state A reference state. @choice{freeair_reference_state}
 * @return Static string, never null; an empty string when there is no such state.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_reference_name(int32_t state);

/** Conditions and standard of a reference state, for a report.
 *
 * Model: table look-up.
 *
 * @param[in] state A reference state. @choice{freeair_reference_state}
 * @return Static string, never null; an empty string when there is no such state.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_reference_text(int32_t state);

/** Reference state by name, in any case.
 *
 * Model: table look-up: the full name, the rest of it with '_' or blanks ("iso
 * 1217"), ANR, normal, ICAO, ISA. Not scfm: people mean different states by it.
 *
 * @param[in]  name  Name of a state.
 * @param[out] state The state; 0 when there is none. @choice{freeair_reference_state}
 * @retval FREEAIR_OK            found
 * @retval FREEAIR_ERR_NULL      name or state is null
 * @retval FREEAIR_ERR_NOT_FOUND there is no state of this name
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_reference_find(const char *name, int32_t *state);

/** Density of moist air.
 *
 * Model: rho = (p - e)/(Rd T) + e/(Rv T), e = relative humidity x saturation
 * pressure over water (IAPWS-IF97, equation 30, extrapolated below 0 degC);
 * Rd = 8.314462618/0.02896546 and Rv = 8.314462618/0.01801528 J/(kg K).
 *
 * @param[in]  p_pa              Pressure, absolute. @range{[1000;1e8]}
 * @param[in]  t_k               Temperature. @range{[223.15;473.15]}
 * @param[in]  relative_humidity Relative humidity; 0 for dry air. @range{[0;1]}
 * @param[out] rho_kg_m3         Density.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        rho_kg_m3 is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the vapour alone would have at least the whole pressure
 * @source{IAPWS R7-97(2012), Industrial Formulation 1997, equation 30; molar masses of Picard et al., Revised formula for
 *   the density of moist air (CIPM-2007), Metrologia 45 (2008) 149}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_reference_density(double p_pa, double t_k, double relative_humidity, double *rho_kg_m3);

/** Volume flow at one state of a flow given at another.
 *
 * Model: the same mass of dry air a second, so q2/q1 = (p1 - e1)/(p2 - e2) x T2/T1,
 * e = relative humidity x saturation pressure of water.
 *
 * @param[in]  q1_m3_s Volume flow at the first state. @range{[0;1e6]}
 * @param[in]  p1_pa   Pressure of the first state, absolute. @range{[1000;1e8]}
 * @param[in]  t1_k    Temperature of the first state. @range{[223.15;473.15]}
 * @param[in]  relative_humidity1 Relative humidity of the first state. @range{[0;1]}
 * @param[in]  p2_pa   Pressure of the second state, absolute. @range{[1000;1e8]}
 * @param[in]  t2_k    Temperature of the second state. @range{[223.15;473.15]}
 * @param[in]  relative_humidity2 Relative humidity of the second state. @range{[0;1]}
 * @param[out] q2_m3_s Volume flow at the second state.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        q2_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION in one of the states the vapour alone would have at least the whole pressure
 * @source{algebra: ideal gas law for dry air at its partial pressure}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_reference_flow_convert(double q1_m3_s, double p1_pa, double t1_k,
                                                   double relative_humidity1, double p2_pa, double t2_k,
                                                   double relative_humidity2, double *q2_m3_s);

/** Volume flow at one reference state of a flow given at another.
 *
 * Model: freeair_reference_flow_convert() with the conditions of both states.
 *
 * @param[in]  q1_m3_s    Volume flow at the first state. @range{[0;1e6]}
 * @param[in]  from_state The first state. @choice{freeair_reference_state}
 * @param[in]  to_state   The second state. @choice{freeair_reference_state}
 * @param[out] q2_m3_s    Volume flow at the second state.
 * @retval FREEAIR_OK            computed
 * @retval FREEAIR_ERR_NULL      q2_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN    q1_m3_s is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND there is no such state
 * @source{algebra: ideal gas law for dry air at its partial pressure}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_reference_flow_between_states(double q1_m3_s, int32_t from_state, int32_t to_state,
                                                          double *q2_m3_s);

/** Volume flow at a reference state of a flow measured at the site.
 *
 * Model: freeair_reference_flow_convert() with the conditions of the state as the second.
 *
 * @param[in]  q1_m3_s Volume flow at the site's conditions. @range{[0;1e6]}
 * @param[in]  p1_pa   Pressure at the site, absolute. @range{[1000;1e8]}
 * @param[in]  t1_k    Temperature at the site. @range{[223.15;473.15]}
 * @param[in]  relative_humidity1 Relative humidity at the site. @range{[0;1]}
 * @param[in]  state   The reference state. @choice{freeair_reference_state}
 * @param[out] q2_m3_s Volume flow at the reference state.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        q2_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND   there is no such state
 * @retval FREEAIR_ERR_NO_SOLUTION at the site the vapour alone would have at least the whole pressure
 * @source{algebra: ideal gas law for dry air at its partial pressure}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_reference_flow_to_state(double q1_m3_s, double p1_pa, double t1_k,
                                                    double relative_humidity1, int32_t state, double *q2_m3_s);

/** Volume flow at the site of a flow given at a reference state.
 *
 * Model: freeair_reference_flow_convert() with the conditions of the state as the first.
 *
 * @param[in]  q1_m3_s Volume flow at the reference state. @range{[0;1e6]}
 * @param[in]  state   The reference state. @choice{freeair_reference_state}
 * @param[in]  p2_pa   Pressure at the site, absolute. @range{[1000;1e8]}
 * @param[in]  t2_k    Temperature at the site. @range{[223.15;473.15]}
 * @param[in]  relative_humidity2 Relative humidity at the site. @range{[0;1]}
 * @param[out] q2_m3_s Volume flow at the site's conditions.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        q2_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NOT_FOUND   there is no such state
 * @retval FREEAIR_ERR_NO_SOLUTION at the site the vapour alone would have at least the whole pressure
 * @source{algebra: ideal gas law for dry air at its partial pressure}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_reference_flow_from_state(double q1_m3_s, int32_t state, double p2_pa, double t2_k,
                                                      double relative_humidity2, double *q2_m3_s);

/** Mass flow of a volume flow at a state, vapour included, and the dry air in it.
 *
 * Model: q x rho for the whole, q (p - e)/(Rd T) for the dry air, as in
 * freeair_reference_density().
 *
 * @param[in]  q_m3_s            Volume flow at the state. @range{[0;1e6]}
 * @param[in]  p_pa              Pressure, absolute. @range{[1000;1e8]}
 * @param[in]  t_k               Temperature. @range{[223.15;473.15]}
 * @param[in]  relative_humidity Relative humidity. @range{[0;1]}
 * @param[out] mass_kg_s         Mass flow of moist air.
 * @param[out] dry_kg_s          Mass flow of the dry air in it.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        an output is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the vapour alone would have at least the whole pressure
 * @source{algebra: ideal gas law for dry air and vapour at their partial pressures}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_reference_mass_flow_from_volume_flow(double q_m3_s, double p_pa, double t_k,
                                                                 double relative_humidity, double *mass_kg_s,
                                                                 double *dry_kg_s);

/** Volume flow at a state of a mass flow of moist air.
 *
 * Model: q = mass flow / rho, as in freeair_reference_density().
 *
 * @param[in]  mass_kg_s         Mass flow of moist air, vapour included. @range{[0;1e6]}
 * @param[in]  p_pa              Pressure, absolute. @range{[1000;1e8]}
 * @param[in]  t_k               Temperature. @range{[223.15;473.15]}
 * @param[in]  relative_humidity Relative humidity. @range{[0;1]}
 * @param[out] q_m3_s            Volume flow at the state.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        q_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_NO_SOLUTION the vapour alone would have at least the whole pressure
 * @source{algebra: ideal gas law for dry air and vapour at their partial pressures}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_reference_volume_flow_from_mass_flow(double mass_kg_s, double p_pa, double t_k,
                                                                 double relative_humidity, double *q_m3_s);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
