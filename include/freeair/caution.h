/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CAUTION_H
#define FREEAIR_CAUTION_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup caution Caution
 * What must be said beside a result that could lead someone to do a thing that
 * hurts. A result carries a set of cautions as bits of a 32-bit mask; a front
 * end shows the text of each bit that is set. Cautions never replace local
 * codes, the nameplate, the manual, or licensed practice.
 * @{
 */

/** Caution bits.
 * @since 0.1
 */
enum freeair_caution {
  FREEAIR_CAUTION_ISOLATE = 1,         /**< Isolate, lock out and tag out before touching the machine. */
  FREEAIR_CAUTION_DEPRESSURISE = 2,    /**< Depressurise to zero, on a gauge that is trusted, before opening. */
  FREEAIR_CAUTION_STORED_ENERGY = 4,   /**< A receiver under pressure stores energy like an explosive. */
  FREEAIR_CAUTION_RELIEF_VALVE = 8,    /**< Never plug, reset or weaken a relief valve. */
  FREEAIR_CAUTION_ROTATING = 16,       /**< Never run with the guard off; belts and flywheels seize hands. */
  FREEAIR_CAUTION_VESSEL = 32,         /**< Vessels are judged by an inspector under local codes, not by calculation. */
  FREEAIR_CAUTION_HOT = 64,            /**< Discharge parts burn; let them cool. */
  FREEAIR_CAUTION_CAPACITOR = 128,     /**< A capacitor stays charged after the power is off. */
  FREEAIR_CAUTION_LIVE = 256,          /**< Live electrical work is for qualified people under local rules. */
  FREEAIR_CAUTION_OIL_MIST = 512,      /**< Oil mist and hot carbon can ignite at high discharge temperature. */
  FREEAIR_CAUTION_LIFTING = 1024,      /**< Heads and motors are heavy; lift with help or tackle. */
  FREEAIR_CAUTION_PROTECTION = 2048,   /**< Wear hearing, eye, hand and foot protection. */
  FREEAIR_CAUTION_BREATHING = 4096,    /**< Breathing air is governed by its own rules. */
  FREEAIR_CAUTION_BLOWING = 8192       /**< Blow guns and hoses injure; limit their pressure as local rules say. */
};

/** Text of one caution, as one English sentence.
 *
 * Model: table look-up.
 *
 * @param[in] caution One caution bit. @choice{freeair_caution}
 * @return Static string, never null; an empty string when caution is not one known bit.
 * @source{common practice}
 * @since 0.1
 */
FREEAIR_API const char *freeair_caution_text(uint32_t caution);

/** Name of one caution, such as "FREEAIR_CAUTION_HOT".
 *
 * Model: table look-up.
 *
 * @param[in] caution One caution bit. @choice{freeair_caution}
 * @return Static string, never null; an empty string when caution is not one known bit.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_caution_name(uint32_t caution);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
