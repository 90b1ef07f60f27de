/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_CATALOGUE_H
#define FREEAIR_CATALOGUE_H

#include <freeair/describe.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup catalogue Structures and constants at run time
 * The structures and the enumeration constants of the library, by position and
 * by name: what a binding needs besides the functions.
 * @{
 */

/** Number of structures.
 * @return Count.
 * @since 0.1
 */
FREEAIR_API size_t freeair_structure_count(void);

/** Structure by position.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return The structure, or null.
 * @since 0.1
 */
FREEAIR_API const freeair_structure *freeair_structure_at(size_t i);

/** Name of a structure.
 * @param[in] s A structure, or null.
 * @return Static string; empty for null.
 * @since 0.1
 */
FREEAIR_API const char *freeair_structure_name(const freeair_structure *s);

/** Size of a structure in this version of the library.
 * @param[in] s A structure, or null.
 * @return Bytes; 0 for null.
 * @since 0.1
 */
FREEAIR_API size_t freeair_structure_size(const freeair_structure *s);

/** Number of fields of a structure, struct_size and flags included.
 * @param[in] s A structure, or null.
 * @return Count; 0 for null.
 * @since 0.1
 */
FREEAIR_API size_t freeair_structure_field_count(const freeair_structure *s);

/** Field of a structure by position.
 * @param[in] s A structure, or null.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return The field, or null.
 * @since 0.1
 */
FREEAIR_API const freeair_parameter *freeair_structure_field(const freeair_structure *s, size_t i);

/** Writes a structure's initial value.
 * @param[in]  s           A structure.
 * @param[out] instance    Memory for it.
 * @param[in]  caller_size Bytes there; no more is written. @range{[0;65536]}
 * @return FREEAIR_OK, FREEAIR_ERR_NULL, or FREEAIR_ERR_VERSION when caller_size is too small.
 * @since 0.1
 */
FREEAIR_API int32_t freeair_structure_init(const freeair_structure *s, void *instance, size_t caller_size);

/** Number of enumeration constants.
 * @return Count.
 * @since 0.1
 */
FREEAIR_API size_t freeair_constant_count(void);

/** Name of an enumeration constant by position.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return Static string; empty past the last.
 * @since 0.1
 */
FREEAIR_API const char *freeair_constant_name(size_t i);

/** Enumeration of a constant by position.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return Static string; empty past the last.
 * @since 0.1
 */
FREEAIR_API const char *freeair_constant_enumeration(size_t i);

/** Meaning of a constant by position.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return Static string; empty past the last.
 * @since 0.1
 */
FREEAIR_API const char *freeair_constant_brief(size_t i);

/** Value of a constant by position.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return Value; 0 past the last.
 * @since 0.1
 */
FREEAIR_API int32_t freeair_constant_value(size_t i);

/** Position of a constant by name.
 * @param[in] name Full name, such as "FREEAIR_VERDICT_MEETS".
 * @return Position, or freeair_constant_count() when there is none of this name or name is null.
 * @since 0.1
 */
FREEAIR_API size_t freeair_constant_find(const char *name);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
