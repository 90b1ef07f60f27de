/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_STATUS_H
#define FREEAIR_STATUS_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup status Status
 * What a call returned. Zero is success, a positive code is a warning (the
 * result is valid, read the text), a negative code is an error (every output
 * is NaN). The codes are the same for every function, and are never renumbered.
 * @{
 */

/** Status codes.
 * @since 0.1
 */
enum freeair_status {
  FREEAIR_OK = 0,                 /**< Computed. */
  FREEAIR_WARN_EXTRAPOLATED = 1,  /**< Computed, but outside the range the correlation was fitted to. */
  FREEAIR_WARN_TRANSITION = 2,    /**< Computed, but between laminar and turbulent flow, where no formula is sure. */
  FREEAIR_WARN_INCONSISTENT = 3,  /**< Computed, but the readings contradict one another. */
  FREEAIR_WARN_TRUNCATED = 4,     /**< Computed, but the caller's array was too short to hold every result. */
  FREEAIR_WARN_LIMIT = 5,         /**< Computed, but a recommended limit of the trade or of a standard is exceeded. */
  FREEAIR_ERR_NULL = -1,          /**< A required pointer is null. */
  FREEAIR_ERR_DOMAIN = -2,        /**< An argument is not a number, infinite or outside its documented range. */
  FREEAIR_ERR_NO_SOLUTION = -3,   /**< The arguments are in range but no state satisfies them together. */
  FREEAIR_ERR_NO_CONVERGENCE = -4, /**< An iteration reached its documented limit. */
  FREEAIR_ERR_OVERFLOW = -5,      /**< The result is not representable. */
  FREEAIR_ERR_VERSION = -6,       /**< A structure's size is not one this library knows. */
  FREEAIR_ERR_DATA = -7,          /**< Too few usable data points. */
  FREEAIR_ERR_NOT_FOUND = -8,     /**< No entry has this name. */
  FREEAIR_ERR_DIMENSION = -9,     /**< The unit measures another kind of quantity. */
  FREEAIR_ERR_UNSUPPORTED = -10   /**< The function cannot be called in this way. */
};

/** Name of a status code, such as "FREEAIR_ERR_DOMAIN".
 *
 * Model: table look-up.
 *
 * @param[in] status A status code. @choice{freeair_status}
 * @return Static string, never null; "FREEAIR_UNKNOWN" for a code this library does not know.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_status_name(int32_t status);

/** Meaning of a status code as one English sentence.
 *
 * Model: table look-up.
 *
 * @param[in] status A status code. @choice{freeair_status}
 * @return Static string, never null.
 * @source{definition}
 * @since 0.1
 */
FREEAIR_API const char *freeair_status_text(int32_t status);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
