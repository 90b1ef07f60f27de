/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_MACHINE_H
#define FREEAIR_MACHINE_H

#include <freeair/export.h>

#include <math.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup machine Machine
 * Description of a reciprocating air compressor of one or two stages, of its
 * receiver and of the site, as the crank-angle model needs it. The stages,
 * bore, stroke and speed are enough: every other field has a default scaled
 * from these. A field that is NaN is not given and takes its default.
 *
 * Defaults are typical of air-cooled shop compressors (common practice). They
 * scale from a nominal suction at 101325 Pa and 293.15 K, an interstage pressure
 * of that times the ratio of swept volumes (at least 1.2, at most 50), and the heat
 * capacity flow of the displacement at 1005 J/(kg K).
 * @{
 */

/** Arrangement of the cylinders.
 * @since 0.1
 */
enum freeair_machine_arrangement {
  FREEAIR_MACHINE_V = 0,           /**< Banks at 90 degrees on one crank pin; separate heads. */
  FREEAIR_MACHINE_SIDE_BY_SIDE = 1 /**< Cylinders in line under one head and one gasket. */
};

/** A machine with its receiver. Areas are effective areas: discharge coefficient times geometric area.
 * A single-stage machine has a first stage alone; its hp_ fields are ignored.
 * @since 0.1
 */
typedef struct freeair_machine {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags; /**< Reserved, 0. */
  double speed_rev_s; /**< Pump speed with the motor at rated slip and a belt that does not slip. @range{(0;100]}
                           @default{motor speed at rated slip times pulley_ratio; one of the two is required} */
  double lp_bore_m; /**< Bore of the first (or only) stage. @range{(0;2]}
                         @default{none, required; freeair_rating_complete can find it} */
  double hp_bore_m; /**< Bore of the second stage. @range{(0;2]} @default{0.55 lp_bore_m} */
  double lp_stroke_m; /**< Stroke of the first stage. Required. @range{(0;2]} */
  double hp_stroke_m; /**< Stroke of the second stage. @range{(0;2]} @default{lp_stroke_m} */
  double rod_ratio; /**< Crank radius over connecting-rod length. @range{[0;0.9]} @default{0.25} */
  double lp_clearance; /**< Clearance volume over swept volume, first stage. @range{(0;0.5]} @default{0.05} */
  double hp_clearance; /**< Clearance volume over swept volume, second stage. @range{(0;0.5]} @default{0.07} */
  double phase_rad; /**< Crank angle by which the second cylinder lags the first. @range{[-6.3;6.3]}
                         @default{pi/2 in a V, pi side by side} */
  double lp_spread_rad; /**< Lag between successive cylinders of the first stage. @range{[-6.3;6.3]}
                             @default{phase_rad for a single stage of two cylinders, else 2 pi / lp_cylinders} */
  double hp_spread_rad; /**< Lag between successive cylinders of the second stage. @range{[-6.3;6.3]}
                             @default{2 pi / hp_cylinders} */
  double lp_suction_area_m2; /**< Effective area of a fully open suction valve, first stage. @range{(0;1]}
                                  @default{piston area times mean piston speed / (50 m/s)} */
  double lp_suction_leak_m2; /**< Effective area open, either way, when it should be shut. @range{[0;1]} @default{0} */
  double lp_suction_lift_pa; /**< Pressure difference at which it is fully open. @range{(0;1e7]}
                                  @default{3 % of the nominal suction pressure} */
  double lp_discharge_area_m2; /**< As above, discharge valve of the first stage. @range{(0;1]}
                                    @default{piston area times mean piston speed / (60 m/s)} */
  double lp_discharge_leak_m2; /**< As above. @range{[0;1]} @default{0} */
  double lp_discharge_lift_pa; /**< As above. @range{(0;1e7]} @default{3 % of the nominal discharge pressure} */
  double hp_suction_area_m2; /**< As above, suction valve of the second stage. @range{(0;1]}
                                  @default{piston area times mean piston speed / (50 m/s)} */
  double hp_suction_leak_m2; /**< As above. @range{[0;1]} @default{0} */
  double hp_suction_lift_pa; /**< As above. @range{(0;1e7]} @default{3 % of the nominal interstage pressure} */
  double hp_discharge_area_m2; /**< As above, discharge valve of the second stage. @range{(0;1]}
                                    @default{piston area times mean piston speed / (60 m/s)} */
  double hp_discharge_leak_m2; /**< As above. @range{[0;1]} @default{0} */
  double hp_discharge_lift_pa; /**< As above. @range{(0;1e7]} @default{3 % of cut_out_pa} */
  double check_valve_area_m2; /**< Effective area of the open receiver check valve. @range{(0;1]}
                                   @default{all discharge valves of the last stage together} */
  double check_valve_leak_m2; /**< Effective area that stays open when it should be shut. @range{[0;1]} @default{0} */
  double check_valve_lift_pa; /**< Pressure difference at which it is fully open. @range{(0;1e7]} @default{1e4} */
  double filter_area_m2; /**< Effective area of the intake filter. @range{(0;10]}
                              @default{displacement times pi / (41 m/s)} */
  double plenum_m3; /**< Volume between filter and first-stage suction valves. @range{(0;10]}
                         @default{half the swept volume of the first stage} */
  double intercooler_m3; /**< Volume between the stages. @range{(0;10]}
                              @default{1.5 swept volumes of the first stage} */
  double intercooler_ua_w_k; /**< Heat transfer of the intercooler to ambient. @range{[0;1e6]}
                                  @default{1.7 times the nominal heat capacity flow} */
  double intercooler_area_m2; /**< Effective area of its flow resistance, in series with each second-stage suction
                                   valve. @range{(0;10]} @default{1.5 hp_suction_area_m2} */
  double relief_set_pa; /**< Absolute pressure at which the intercooler relief valve begins to open; fully open at
                             1.1 times. @range{(0;1e8]} @default{1.5 times the nominal interstage pressure} */
  double relief_area_m2; /**< Effective area of the open relief valve. @range{[0;1]}
                              @default{passes 1.5 times the displacement at relief_set_pa} */
  double intercooler_leak_m2; /**< Leak from the intercooler to ambient. @range{[0;1]} @default{0} */
  double line_m3; /**< Volume from the last discharge valve to the check valve. @range{(0;10]}
                       @default{0.3 swept volumes of the first stage} */
  double line_ua_w_k; /**< Heat transfer of this line to ambient. @range{[0;1e6]}
                           @default{0.3 times the nominal heat capacity flow} */
  double unloader_leak_m2; /**< Leak from this line to ambient through the unloader. @range{[0;1]} @default{0} */
  double lp_wall_ua_w_k; /**< Heat transfer from one first-stage cylinder to ambient. @range{(0;1e6]}
                              @default{120 W/(m2 K) times pi bore (stroke + bore/2)} */
  double hp_wall_ua_w_k; /**< Heat transfer from one second-stage cylinder to ambient. @range{(0;1e6]}
                              @default{120 W/(m2 K) times pi bore (stroke + bore/2)} */
  double suction_ua_w_k; /**< Heat transfer from the first-stage walls to the inlet plenum. @range{[0;1e6]}
                              @default{0.12 times the nominal heat capacity flow} */
  double lp_ring_area_m2; /**< Effective area past the rings of one first-stage cylinder to the crankcase.
                               @range{[0;1]} @default{5e-7 m times bore} */
  double hp_ring_area_m2; /**< Effective area past the rings of one second-stage cylinder to the crankcase.
                               @range{[0;1]} @default{5e-7 m times bore} */
  double crankcase_k; /**< Temperature of gas in the crankcase, at ambient pressure. @range{(0;1000]} @default{330} */
  double heat_coefficient; /**< Factor a of the wall heat transfer Nu = a Re^b. @range{[0;100]} @default{0.7} */
  double heat_exponent; /**< Exponent b of the wall heat transfer Nu = a Re^b. @range{[0;1]} @default{0.7} */
  double gasket_breach_m2; /**< Opening between the first two cylinders: first of each stage, or the first two of a
                                single stage. @range{[0;1]} @default{0} */
  double lp_gasket_leak_m2; /**< Opening to outside, first cylinder of first stage. @range{[0;1]} @default{0} */
  double hp_gasket_leak_m2; /**< Opening to outside, first cylinder of second stage. @range{[0;1]} @default{0} */
  double fmep_pa; /**< Friction mean effective pressure on all swept volumes. @range{[0;1e7]} @default{3e4} */
  double belt_efficiency; /**< Shaft power over motor power. @range{(0;1]} @default{0.95} */
  double belt_slip; /**< Share of the pump speed lost by slip of the belt. @range{[0;0.9]} @default{0} */
  double pulley_ratio; /**< Pump speed over motor speed without belt slip. @range{(0;20]}
                            @default{speed_rev_s over motor speed at rated slip} */
  double motor_synchronous_rev_s; /**< Motor speed without load. @range{(0;1000]} @default{30} */
  double motor_rated_slip; /**< Slip at rated power and voltage. @range{[0;0.3]} @default{0.035} */
  double motor_rated_v; /**< Rated voltage. @range{(0;1e5]} @default{230} */
  double motor_rated_w; /**< Rated shaft power of the motor. @range{(0;1e8]}
                             @default{1.1 times a closed-form estimate at cut_out_pa} */
  double motor_torque_factor; /**< Torque over a sound motor's, same slip and voltage. @range{(0;2]} @default{1} */
  double receiver_m3; /**< Volume of the receiver. @range{(0;1e4]} @default{20 s of displacement} */
  double receiver_water_m3; /**< Volume of water in the receiver; less than receiver_m3. @range{[0;1e4]} @default{0} */
  double receiver_wall_j_k; /**< Heat capacity of the receiver wall. @range{(0;1e9]}
                                 @default{1e4 J/(K m3) times receiver_m3 times cut_out_pa / (1 bar)} */
  double receiver_gas_ua_w_k; /**< Heat transfer from gas to wall at ambient pressure; grows as p^(2/3).
                                   @range{[0;1e6]} @default{29 W/(m2 K) times receiver_m3^(2/3)} */
  double receiver_wall_ua_w_k; /**< Heat transfer from wall to ambient. @range{[0;1e6]}
                                    @default{58 W/(m2 K) times receiver_m3^(2/3)} */
  double downstream_leak_m2; /**< Leak from the receiver or the system behind it. @range{[0;1]} @default{0} */
  double demand_m3_s; /**< Air drawn from the receiver, as free air of the site. @range{[0;1000]} @default{0} */
  double cut_in_pa; /**< Pressure, absolute, at which the switch starts the pump. @range{(0;1e8]}
                         @default{10.32 bar, single-stage 7.56 bar} */
  double cut_out_pa; /**< Pressure, absolute, at which the switch stops the pump. @range{(0;1e8]}
                          @default{13.08 bar, single-stage 9.63 bar} */
  double switch_error_pa; /**< True minus set pressure at which the switch acts. @range{[-1e7;1e7]} @default{0} */
  double gauge_error_pa; /**< Reading of the receiver gauge minus true pressure. @range{[-1e7;1e7]} @default{0} */
  double rated_delivery_m3_s; /**< Free air delivery on the nameplate. @range{(0;1000]} @default{none} */
  double rated_pa; /**< Receiver pressure, absolute, of that rating. @range{(0;1e8]} @default{cut_out_pa} */
  double gas_constant_j_kg_k; /**< Gas constant of the air. @range{(0;1e4]} @default{287.05} */
  double heat_capacity_ratio; /**< Heat capacity ratio of the air. @range{(1;1.7]} @default{1.4} */
  double heat_capacity_rise; /**< Share of the rise of cp of dry air that the gas follows. @range{[0;1]} @default{0} */
  int32_t stages; /**< Number of stages. @range{[1;2]} @default{2} */
  int32_t arrangement; /**< Of the cylinders. @choice{freeair_machine_arrangement} @default{FREEAIR_MACHINE_V} */
  int32_t lp_cylinders; /**< Equal cylinders of the first stage. @range{[1;4]} @default{1} */
  int32_t hp_cylinders; /**< Equal cylinders of the second stage. @range{[1;4]} @default{1} */
  int32_t lp_leaking_cylinders; /**< How many cylinders of the first stage, from the first, have its valve leaks; 0
                                     for all. @range{[0;4]} @default{0} */
  int32_t hp_leaking_cylinders; /**< The same of the second stage. @range{[0;4]} @default{0} */
} freeair_machine;

/** Initial value of a machine: nothing given, two stages in a V. */
#define FREEAIR_MACHINE_INIT \
  { (uint32_t)sizeof(freeair_machine), 0u, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, \
   NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 2, 0, 1, 1, 0, 0}

/** Frozen size of the first release. */
#define FREEAIR_MACHINE_BASELINE 616

/** The site where the machine stands.
 * @since 0.1
 */
typedef struct freeair_machine_site {
  uint32_t struct_size; /**< Size of this structure as the caller knows it. */
  uint32_t flags; /**< Reserved, 0. */
  double barometric_pa; /**< Barometric pressure. @range{[3e4;1.2e5]} @default{101325} */
  double ambient_k; /**< Temperature of intake and cooling air. @range{[220;340]} @default{293.15} */
  double humidity; /**< Relative humidity of the intake air; changes its gas constant. @range{[0;1]} @default{0} */
  double supply_v; /**< Voltage at the running motor. @range{(0;1e5]} @default{motor_rated_v of the machine} */
} freeair_machine_site;

/** Initial value of a site: nothing given. */
#define FREEAIR_MACHINE_SITE_INIT { (uint32_t)sizeof(freeair_machine_site), 0u, NAN, NAN, NAN, NAN}

/** Frozen size of the first release. */
#define FREEAIR_MACHINE_SITE_BASELINE 40

/** Initialises a machine to "nothing given", two stages in a V.
 *
 * Model: assignment.
 *
 * @param[out] machine     Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    machine is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_machine_init(freeair_machine *machine, size_t caller_size);

/** Initialises a site to "nothing given".
 *
 * Model: assignment.
 *
 * @param[out] site        Structure to initialise.
 * @param[in]  caller_size Its size as the caller knows it; no more is written.
 * @retval FREEAIR_OK          initialised
 * @retval FREEAIR_ERR_NULL    site is null
 * @retval FREEAIR_ERR_VERSION caller_size is below the baseline or absurd
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_machine_site_init(freeair_machine_site *site, size_t caller_size);

/** Fills every field that is not given with its default.
 *
 * Model: the defaults documented at each field. Idempotent: a complete
 * description is returned unchanged. rated_delivery_m3_s stays NaN when not given.
 *
 * @param[in]  machine  Description, possibly with NaN fields.
 * @param[out] complete The same, complete.
 * @retval FREEAIR_OK          completed
 * @retval FREEAIR_ERR_NULL    a pointer is null
 * @retval FREEAIR_ERR_VERSION a structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN  a required field is missing, a field is outside its range, a leak is larger than its
 *                             valve, cut_in_pa is not below cut_out_pa, or water fills the receiver
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_machine_complete(const freeair_machine *machine, freeair_machine *complete);

/** Displacement: swept volume of the first stage times nominal speed.
 *
 * Model: lp_cylinders * pi/4 * bore^2 * stroke * speed, at rated motor slip and without belt slip.
 *
 * @param[in]  machine             Description, possibly with NaN fields.
 * @param[out] displacement_m3_s   Displacement.
 * @retval FREEAIR_OK          computed
 * @retval FREEAIR_ERR_NULL    a pointer is null
 * @retval FREEAIR_ERR_VERSION the structure has an unknown size
 * @retval FREEAIR_ERR_DOMAIN  as in freeair_machine_complete
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_machine_displacement(const freeair_machine *machine, double *displacement_m3_s);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
