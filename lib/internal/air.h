/* SPDX-License-Identifier: MIT */
/* Dry air as an ideal gas, for the topics that have no gas among their
 * arguments: gas constant of ISO 2533, heat-capacity ratio 1.4. */
#ifndef FREEAIR_INTERNAL_AIR_H
#define FREEAIR_INTERNAL_AIR_H

#define FREEAIR__AIR_R 287.05287 /* J/(kg K) */
#define FREEAIR__AIR_K 1.4

#endif
