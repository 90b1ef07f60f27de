/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DEMAND_H
#define FREEAIR_DEMAND_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup demand Demand
 * Air that is used against air that is made: a demand profile and what store and
 * capacity it needs, how many of a shop's tools run at once, what a regulator saves.
 * Flows are free air at a reference state, the same for all; a store is a volume of
 * that free air between the pressures of the receiver: the topic receiver gives its
 * size. A profile is a list of flows with the time that each lasts.
 * @{
 */

/** Mean, greatest and least flow of a profile.
 *
 * Model: mean = sum q t / sum t.
 *
 * @param[in]  flow_m3_s  Flows. @shape{n} @range{[0;1e4]}
 * @param[in]  duration_s Time that each lasts. @shape{n} @range{[0;1e9]}
 * @param[in]  n          Number of steps. @range{[1;inf)}
 * @param[out] mean_m3_s  Mean flow.
 * @param[out] peak_m3_s  Greatest flow of a step that lasts.
 * @param[out] least_m3_s Least flow of a step that lasts.
 * @param[out] air_m3     Air used.
 * @param[out] time_s     Time of the whole profile.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an element is outside its range
 * @retval FREEAIR_ERR_DATA   no step that lasts
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_demand_summary(const double *flow_m3_s, const double *duration_s, size_t n,
                                           double *mean_m3_s, double *peak_m3_s, double *least_m3_s, double *air_m3,
                                           double *time_s);

/** Store that a capacity needs to serve a profile that repeats.
 *
 * Model: the running deficit d = max(0, d + (q - capacity) t), walked twice through the profile so that it begins as
 * it ends; its greatest value is the store.
 *
 * @param[in]  flow_m3_s     Flows. @shape{n} @range{[0;1e4]}
 * @param[in]  duration_s    Time that each lasts. @shape{n} @range{[0;1e9]}
 * @param[in]  n             Number of steps. @range{[1;inf)}
 * @param[in]  capacity_m3_s Flow that the compressors can make. @range{[0;1e4]}
 * @param[out] store_m3      Free air to be stored.
 * @param[out] short_s       Time in which demand exceeds capacity.
 * @param[out] duty          Mean demand over capacity: share of the time on load.
 * @retval FREEAIR_OK              computed
 * @retval FREEAIR_ERR_NULL        a pointer is null
 * @retval FREEAIR_ERR_DOMAIN      an input is outside its range
 * @retval FREEAIR_ERR_DATA        no step that lasts
 * @retval FREEAIR_ERR_NO_SOLUTION the mean demand exceeds the capacity: no store is large enough
 * @source{algebra: Rippl's mass curve, as for water reservoirs}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_demand_store(const double *flow_m3_s, const double *duration_s, size_t n,
                                         double capacity_m3_s, double *store_m3, double *short_s, double *duty);

/** Capacity that a store needs to serve a profile that repeats.
 *
 * Model: inverse of freeair_demand_store, bisected between mean and greatest demand, to rounding.
 *
 * @param[in]  flow_m3_s     Flows. @shape{n} @range{[0;1e4]}
 * @param[in]  duration_s    Time that each lasts. @shape{n} @range{[0;1e9]}
 * @param[in]  n             Number of steps. @range{[1;inf)}
 * @param[in]  store_m3      Free air that can be stored. @range{[0;1e12]}
 * @param[out] capacity_m3_s Flow that the compressors must make.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @retval FREEAIR_ERR_DATA   no step that lasts
 * @source{algebra: Rippl's mass curve, as for water reservoirs}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_demand_capacity(const double *flow_m3_s, const double *duration_s, size_t n,
                                            double store_m3, double *capacity_m3_s);

/** Demand of tools that are used now and then.
 *
 * Model: independent tools, each kind of so many with a flow and a share of the time in use: mean = sum n q u,
 * deviation^2 = sum n q^2 u (1 - u), connected = sum n q.
 *
 * @param[in]  tools           Tools of each kind, whole numbers. @shape{kinds} @range{[0;1e6]}
 * @param[in]  flow_m3_s       Flow of one, in use. @shape{kinds} @range{[0;1e3]}
 * @param[in]  use             Share of the time in use. @shape{kinds} @range{[0;1]}
 * @param[in]  kinds           Number of kinds. @range{[1;inf)}
 * @param[out] mean_m3_s       Mean demand.
 * @param[out] deviation_m3_s  Standard deviation of the demand.
 * @param[out] connected_m3_s  Demand of all at once.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an element is outside its range
 * @retval FREEAIR_ERR_DATA   no kind
 * @source{algebra: mean and variance of a sum of binomial variables}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_demand_tools(const double *tools, const double *flow_m3_s, const double *use,
                                         size_t kinds, double *mean_m3_s, double *deviation_m3_s,
                                         double *connected_m3_s);

/** How many of a number of equal tools run at once at most, for so much of the time.
 *
 * Model: the least k with P(X <= k) at least the confidence, X binomial.
 *
 * @param[in]  tools      Number of tools. @range{[1;10000]}
 * @param[in]  use        Share of the time that each is in use. @range{[0;1]}
 * @param[in]  confidence Share of the time in which no more run. @range{[0;1)}
 * @param[out] running    Number that run at once.
 * @param[out] share      Probability that no more run.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   a pointer is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{Abramowitz and Stegun, Handbook of Mathematical Functions, 26.1.20, binomial distribution}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_demand_running(int32_t tools, double use, double confidence, int32_t *running,
                                           double *share);

/** Simultaneity and diversity of a group of users.
 *
 * Model: simultaneity = greatest demand of the group / sum of the greatest demands of its members; diversity is its
 * inverse.
 *
 * @param[in]  group_m3_s   Greatest demand of the group. @range{[0;1e6]}
 * @param[in]  members_m3_s Sum of the greatest demands of the members. @range{[1e-9;1e6]}
 * @param[out] simultaneity Simultaneity factor.
 * @param[out] diversity    Diversity factor; infinite without demand.
 * @retval FREEAIR_OK                computed
 * @retval FREEAIR_WARN_INCONSISTENT computed, but the group uses more than its members
 * @retval FREEAIR_ERR_NULL          a pointer is null
 * @retval FREEAIR_ERR_DOMAIN        an input is outside its range
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_demand_simultaneity(double group_m3_s, double members_m3_s, double *simultaneity,
                                                double *diversity);

/** Demand at another pressure.
 *
 * Model: q2 = q1 (regulated + (1 - regulated) p2/p1): users without a regulator, leaks and open nozzles, all choked,
 * draw in proportion to the absolute pressure (the artificial demand of too high a pressure).
 *
 * @param[in]  q1_m3_s   Demand at p1_pa. @range{[0;1e4]}
 * @param[in]  p1_pa     Pressure, absolute. @range{[1e4;1e8]}
 * @param[in]  p2_pa     Another pressure, absolute. @range{[1e4;1e8]}
 * @param[in]  regulated Share of the demand behind regulators set below both. @range{[0;1]}
 * @param[out] q2_m3_s   Demand at p2_pa.
 * @retval FREEAIR_OK         computed
 * @retval FREEAIR_ERR_NULL   q2_m3_s is null
 * @retval FREEAIR_ERR_DOMAIN an input is outside its range
 * @source{US Department of Energy, Improving Compressed Air System Performance: a sourcebook for industry, artificial demand (from memory)}
 * @since 0.1
 */
FREEAIR_API int32_t freeair_demand_at_pressure(double q1_m3_s, double p1_pa, double p2_pa, double regulated,
                                               double *q2_m3_s);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
