/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_PUMPUP_H
#define FREEAIR_PUMPUP_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup pumpup Pump-up test
 * What a compressor delivers, from the time it takes to raise the pressure of a
 * receiver whose volume is known. The mass gained is V/R (p2/T2 - p1/T1). The
 * plain rule V (p2 - p1) / (p_a t) leaves the temperatures out: while it fills,
 * the gas is warmer than before, and the rule reads too much, by several percent
 * from empty and by far more over the narrow band from cut-in to cut-out.
 *
 * Gas temperatures that were not measured are estimated by a lumped model:
 * energy balance of the gas, heat exchange with the wall that grows as
 * (p / p_ambient)^(2/3) (free convection), wall with heat capacity, heat
 * exchange of the wall with the surroundings. Its parameters are uncertain by a
 * factor of two, and that is carried into the result. Ideal gas, R =
 * 287.05287 J/(kg K), k = 1.4; up to 16 bar the error of that is below 0.5 %.
 * @{
 */

/** State of the receiver before a timed run.
 * @since 0.1
 */
enum freeair_pumpup_start {
  FREEAIR_PUMPUP_UNKNOWN = 0,    /**< Not known: gas at ambient temperature, give or take 15 K. */
  FREEAIR_PUMPUP_SOAKED = 1,     /**< At rest long enough that gas and wall are at ambient temperature. */
  FREEAIR_PUMPUP_DRAWN_DOWN = 2, /**< Soaked, then drawn down just now: the gas is cold. */
  FREEAIR_PUMPUP_CYCLING = 3     /**< In the middle of regular cycles of load and rest. */
};

/** A timed pump-up test: receiver, site, readings and what is known of temperatures.
 * Every pressure is absolute: what the gauge read plus p_ambient_pa. Every uncertainty is a standard uncertainty.
 * @since 0.1
 */
typedef struct freeair_pumpup_test {
  uint32_t struct_size;      /**< Size of this structure as the caller knows it. */
  uint32_t flags;            /**< Reserved, 0. */
  double v_receiver_m3;      /**< Volume of the receiver. @range{(0;1e4]} */
  double v_piping_m3;        /**< Volume of piping open to it. @range{[0;1e4]} @default{0} */
  double v_water_m3;         /**< Volume that water takes of it. @range{[0;1e4]} @default{0} */
  double v_uncertainty_m3;   /**< Uncertainty of the gas volume. @range{[0;1e4]} @default{3 % of it} */
  double p_ambient_pa;       /**< Barometric pressure. @range{[2e4;2e5]} */
  double p_ambient_uncertainty_pa; /**< Its uncertainty. @range{[0;5e3]} @default{300} */
  double t_ambient_k;              /**< Temperature of the air drawn in and about the receiver. @range{[223.15;350]} */
  double t_ambient_uncertainty_k;  /**< Its uncertainty. @range{[0;30]} @default{1} */
  double p_start_pa;               /**< Pressure at the start. @range{[1e3;1e8]} @default{from the table} */
  double p_end_pa;                 /**< Pressure at the end, higher. @range{[1e3;1e8]} @default{from the table} */
  double duration_s;               /**< Time from start to end. @range{[0.01;1e7]} @default{from the table} */
  double duration_uncertainty_s;   /**< Its uncertainty. @range{[0;1e6]} @default{1; for a table 0.1 % of it} */
  double reading_uncertainty_pa; /**< Random uncertainty of one pressure reading. @range{[0;1e7]} @default{0.5 % of
                                      the gauge pressure at the end; with eight readings or more their scatter} */
  double gauge_scale_uncertainty; /**< Relative uncertainty of the scale of the gauge. @range{[0;0.3]} @default{0.01} */
  double t_start_k;          /**< Gas temperature at the start. @range{[150;600]} @default{from start} */
  double t_end_k;            /**< Gas temperature at the end. @range{[150;600]} @default{from the lumped model} */
  double t_gas_uncertainty_k; /**< Uncertainty of each of these two where given. @range{[0;50]} @default{1} */
  double t_wall_start_k;     /**< Wall temperature at the start. @range{[150;600]} @default{from start} */
  double p_before_pa;        /**< Pressure before drawing down. @range{[1e3;1e8]} @default{the pressure at the end} */
  double draw_s;             /**< How long the drawing down took. @range{[0.1;1e6]} @default{60} */
  double rest_s;             /**< Rest between loads, required for CYCLING. @range{[0.1;1e7]} @default{not cycling} */
  double t_in_k;             /**< Temperature of the air that enters. @range{[200;700]} @default{60 K above ambient} */
  double t_in_uncertainty_k; /**< Its uncertainty. @range{[0;100]} @default{23: anything within 40 K} */
  double ua_gas_w_k;         /**< Heat transfer gas to wall at ambient pressure. @range{[0;1e6]}
                                  @default{29 W/(m2 K) times the 2/3 power of the receiver's volume} */
  double ua_wall_w_k;        /**< Heat transfer wall to surroundings. @range{[0;1e6]}
                                  @default{58 W/(m2 K) times the 2/3 power of the receiver's volume} */
  double c_wall_j_k;         /**< Heat capacity of the wall. @range{[1;1e9]}
                                  @default{0.1 J/(K m3 Pa) times the receiver's volume and the pressure at the end} */
  double thermal_uncertainty; /**< Uncertainty of the logarithm of these three. @range{[0;1.5]}
                                   @default{0.4: anything within a factor of two} */
  double fall;                /**< Share of the inflow lost from ambient pressure to end. @range{[0;1]} @default{0.2} */
  double fall_uncertainty;    /**< Its uncertainty. @range{[0.001;1]} @default{0.2} */
  double humidity;             /**< Relative humidity of the air drawn in. @range{[0;1]} @default{0, dry} */
  double humidity_uncertainty; /**< Its uncertainty. @range{[0;0.5]} @default{0.05 where it is given, else 0} */
  double p_reference_pa;       /**< Pressure of the reference state. @range{[1e4;1e7]} @default{of reference} */
  double t_reference_k;        /**< Temperature of it. @range{[223.15;473.15]} @default{of reference} */
  double humidity_reference;   /**< Relative humidity of it. @range{[0;1]} @default{of reference, else 0} */
  int32_t start;               /**< State before the run. @choice{freeair_pumpup_start} */
  int32_t reference;           /**< Reference state; 0 for none or another. @choice{freeair_reference_state} */
} freeair_pumpup_test;

/** Initial value of a test: nothing given, state before the run unknown. */
#define FREEAIR_PUMPUP_TEST_INIT \
  { (uint32_t)sizeof(freeair_pumpup_test), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_PUMPUP_TEST_BASELINE 288

/** What a pump-up test says. The contributions from_... are standard uncertainties of delivery_m3_s; their root sum
 * of squares is delivery_uncertainty_m3_s.
 * @since 0.1
 */
typedef struct freeair_pumpup_result {
  uint32_t struct_size;              /**< Size of this structure as the caller knows it. */
  uint32_t flags;                    /**< Reserved, 0. */
  double mass_kg;                    /**< Mass of dry air gained. */
  double mass_flow_kg_s;             /**< Net mass flow of dry air, mean of the run. */
  double mass_flow_uncertainty_kg_s; /**< Its standard uncertainty. */
  double delivery_m3_s;              /**< Free air delivery: this flow as drawn in from the surroundings. */
  double delivery_uncertainty_m3_s;  /**< Its standard uncertainty. */
  double reference_m3_s;             /**< The same flow at the reference state; NaN when no reference is given. */
  double reference_uncertainty_m3_s; /**< Its standard uncertainty. */
  double plain_m3_s;                 /**< What the plain rule V (p2 - p1) / (p_a t) says. */
  double bias;                       /**< plain_m3_s / delivery_m3_s - 1. */
  double bias_uncertainty;           /**< Its standard uncertainty. */
  double p_start_pa;                 /**< Pressure at the start, smoothed when there are more than two readings. */
  double p_end_pa;                   /**< Pressure at the end, likewise. */
  double duration_s;                 /**< Time from start to end. */
  double t_start_k;                  /**< Gas temperature at the start, as measured or estimated. */
  double t_end_k;                    /**< Gas temperature at the end, likewise. */
  double t_end_uncertainty_k;        /**< Standard uncertainty of that. */
  double t_wall_start_k;             /**< Wall temperature at the start. */
  double t_wall_end_k;               /**< Wall temperature at the end; NaN when no temperature had to be estimated. */
  double fall;                       /**< Share of the inflow lost from ambient pressure to the end, as found. */
  double fall_uncertainty;           /**< Its standard uncertainty; that of the test when the readings add nothing. */
  double scatter_pa;                 /**< Standard deviation of one pressure reading, as used. */
  double from_volume_m3_s;           /**< Contribution of the volume. */
  double from_readings_m3_s;         /**< Of the single pressure readings. */
  double from_scale_m3_s;            /**< Of the scale of the gauge. */
  double from_time_m3_s;             /**< Of the time. */
  double from_barometer_m3_s;        /**< Of the barometric pressure. */
  double from_ambient_m3_s;          /**< Of the ambient temperature. */
  double from_humidity_m3_s;         /**< Of the humidity. */
  double from_start_m3_s;            /**< Of the temperatures at the start. */
  double from_end_m3_s;              /**< Of a measured temperature at the end. */
  double from_inlet_m3_s;            /**< Of the temperature of the air that enters. */
  double from_exchange_m3_s;         /**< Of the heat exchange and the heat capacity of the wall. */
  double from_course_m3_s;           /**< Of the course of the inflow during the run. */
} freeair_pumpup_result;

/** Initial value of a result. */
#define FREEAIR_PUMPUP_RESULT_INIT \
  { (uint32_t)sizeof(freeair_pumpup_result), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_PUMPUP_RESULT_BASELINE 272

/** Initialises a test to "nothing given".
 *
 * Model: assignment.
 *
 * @param[out] test        Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    test is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pumpup_test_init(freeair_pumpup_test *test, size_t caller_size);

/** Initialises a result.
 *
 * Model: assignment.
 *
 * @param[out] result      Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    result is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pumpup_result_init(freeair_pumpup_result *result, size_t caller_size);

/** Delivery from two pressures and the time between them.
 *
 * Model: net mass of dry air = V/R ((p2 - e2)/T2 - (p1 - e1)/T1), delivery =
 * mass R T_a / ((p_a - e_a) t). The vapour pressure is e_a = humidity e_s(T_a)
 * outside and e_s min(1, humidity p/p_a) in the receiver. A temperature that is
 * not given comes from the lumped model of the receiver: an inflow w =
 * w0 (1 - fall x), x = (p - p_a) / (p2 - p_a), is found that makes the pressure
 * rise from p1 to p2 in this time (to 1e-10; the time steps leave 1e-9). Air drawn
 * off or leaking away during the run is missing from the result: it is the net flow.
 * Uncertainty by first-order propagation, each input moved up and down by its
 * standard uncertainty (half the difference), inputs taken as independent.
 *
 * @param[in]  test   Receiver, site, readings; p_start_pa, p_end_pa and duration_s are required.
 * @param[out] result What the test says.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_EXTRAPOLATED  computed, but above 100 bar, where air is no longer an ideal gas within 1 %
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         a field is missing or outside its range, p_end_pa is not above p_start_pa, water
 *                                    fills the receiver, an uncertainty is more than half of its quantity, rest_s
 *                                    is missing for CYCLING, or the vapour has more than half the pressure
 * @retval FREEAIR_ERR_NO_SOLUTION    no mass flows in between these states, whatever the inflow
 * @retval FREEAIR_ERR_NO_CONVERGENCE more than 100 iterations or 16384 time steps would be needed
 * @source{JCGM 100:2008, 5.1.3 note 2; Bureau of Energy Efficiency (India), Energy Performance Assessment, Compressors,
 * capacity by filling a receiver (from memory)}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @caution{FREEAIR_CAUTION_RELIEF_VALVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pumpup_analyse(const freeair_pumpup_test *test, freeair_pumpup_result *result);

/** Delivery from a table of times and pressures, or from a stretch of a log.
 *
 * Model: as freeair_pumpup_analyse, with the starting pressure, the inflow, its
 * fall with pressure and a bend in that fitted to all readings by weighted least
 * squares (Huber's weights from eight readings on). fall and a bend of 0 +- 0.05
 * are what is expected beforehand; readings that tell more prevail. Two rows give
 * what freeair_pumpup_analyse gives. p_start_pa, p_end_pa and duration_s of the
 * test are not used.
 *
 * @param[in]  test   Receiver and site.
 * @param[in]  t_s    Times, increasing. @shape{n} @range{[-1e12;1e12]}
 * @param[in]  p_pa   Pressures, absolute. @shape{n} @range{[1e3;1e8]}
 * @param[in]  n      Rows, at least 2.
 * @param[out] result What the test says, from the first row to the last.
 * @retval FREEAIR_OK                 computed
 * @retval FREEAIR_WARN_EXTRAPOLATED  computed, but above 100 bar, where air is no longer an ideal gas within 1 %
 * @retval FREEAIR_ERR_NULL           a pointer is null
 * @retval FREEAIR_ERR_VERSION        a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN         as in freeair_pumpup_analyse, or a row is outside its range
 * @retval FREEAIR_ERR_DATA           fewer than two rows, times that do not increase, or a last pressure not above the
 *                                    first
 * @retval FREEAIR_ERR_NO_SOLUTION    no mass flows in between these states, whatever the inflow
 * @retval FREEAIR_ERR_NO_CONVERGENCE more than 100 iterations or 16384 time steps would be needed
 * @source{JCGM 100:2008, 5.1; P. J. Huber, Robust Statistics, chapter 7 (weights)}
 * @caution{FREEAIR_CAUTION_STORED_ENERGY}
 * @caution{FREEAIR_CAUTION_RELIEF_VALVE}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_pumpup_analyse_table(const freeair_pumpup_test *test, const double *t_s,
                                                 const double *p_pa, size_t n, freeair_pumpup_result *result);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
