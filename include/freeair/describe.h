/* SPDX-License-Identifier: MIT */
#ifndef FREEAIR_DESCRIBE_H
#define FREEAIR_DESCRIBE_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {
#endif

/** @defgroup describe Description at run time
 * The library describes itself: every function that computes something can be
 * found by name, inspected, called on an array of numbers and mapped over
 * strided memory. Calculators, SQL functions, spreadsheets and scripting
 * bindings are complete without glue written by hand.
 *
 * All strings and objects returned here are static and live as long as the
 * library; nothing is ever freed. Where text is absent the string is empty.
 * @{
 */

/** A function of the library. Opaque: pass the pointer around.
 * @since 0.1
 */
typedef struct freeair_function freeair_function;

/** A structure of the library. Opaque: pass the pointer around.
 * @since 0.1
 */
typedef struct freeair_structure freeair_structure;

/** Kinds of value.
 * @since 0.1
 */
enum freeair_type {
  FREEAIR_TYPE_DOUBLE = 1,   /**< double */
  FREEAIR_TYPE_INT32 = 2,    /**< int32_t */
  FREEAIR_TYPE_UINT32 = 3,   /**< uint32_t */
  FREEAIR_TYPE_SIZE = 4,     /**< size_t, also ptrdiff_t */
  FREEAIR_TYPE_TEXT = 5,     /**< const char *, a string that ends with a zero byte */
  FREEAIR_TYPE_STRUCTURE = 6 /**< a structure, passed by pointer */
};

/** Properties of a parameter or field, as bits.
 * @since 0.1
 */
enum freeair_parameter_flag {
  FREEAIR_PARAMETER_OUTPUT = 1,       /**< Written by the call. */
  FREEAIR_PARAMETER_ARRAY = 2,        /**< Points to as many elements as another parameter says. */
  FREEAIR_PARAMETER_OPTIONAL = 4,     /**< NaN stands for "not given"; fallback says what is then used. */
  FREEAIR_PARAMETER_LOWER_CLOSED = 8, /**< The lower end belongs to the range. */
  FREEAIR_PARAMETER_UPPER_CLOSED = 16 /**< The upper end belongs to the range. */
};

/** A parameter of a function or a field of a structure. Grows at its tail only;
 * use the pointers that this library returns, never an array of these.
 * @since 0.1
 */
typedef struct freeair_parameter {
  const char *name;                   /**< Its name. */
  const char *brief;                  /**< Its meaning. */
  const char *unit;                   /**< Coherent SI unit, "1" for a pure number, "any" for the caller's. */
  const char *range;                  /**< Range as text, such as "(0;1e8]". */
  const char *fallback;               /**< What is used when an optional value is not given. */
  const char *choice;                 /**< Enumeration whose constants it takes. */
  const freeair_structure *structure; /**< Structure it points to, else null. */
  double lower;                       /**< Lower end of the range; NaN without a range. */
  double upper;                       /**< Upper end of the range; NaN without a range. */
  int32_t type;                       /**< One of freeair_type. */
  uint32_t flags;                     /**< Bits of freeair_parameter_flag. */
  uint32_t offset;                    /**< Bytes from the start of the structure (fields). */
  uint32_t size;                      /**< Bytes of one element. */
  int32_t length_index;               /**< Parameter that gives an array's length, or -1. */
  int32_t stride_index;               /**< Parameter that gives the bytes between elements, or -1. */
} freeair_parameter;

/** Number of functions.
 * @return Count.
 * @since 0.1
 */
FREEAIR_API size_t freeair_function_count(void);

/** Function by position, in the order of the handbook's topics.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return The function, or null when i is too large.
 * @since 0.1
 */
FREEAIR_API const freeair_function *freeair_function_at(size_t i);

/** Function by name.
 * @param[in] name Full name, such as "freeair_belt_slip_from_speeds".
 * @return The function, or null when there is none of this name or name is null.
 * @since 0.1
 */
FREEAIR_API const freeair_function *freeair_function_find(const char *name);

/** Name of a function.
 * @param[in] f A function, or null.
 * @return Static string; empty for null.
 * @since 0.1
 */
FREEAIR_API const char *freeair_function_name(const freeair_function *f);

/** Topic of a function.
 * @param[in] f A function, or null.
 * @return Static string; empty for null.
 * @since 0.1
 */
FREEAIR_API const char *freeair_function_topic(const freeair_function *f);

/** What a function computes, in one sentence.
 * @param[in] f A function, or null.
 * @return Static string; empty for null.
 * @since 0.1
 */
FREEAIR_API const char *freeair_function_brief(const freeair_function *f);

/** Equation and assumptions of a function.
 * @param[in] f A function, or null.
 * @return Static string; empty for null.
 * @since 0.1
 */
FREEAIR_API const char *freeair_function_model(const freeair_function *f);

/** Published source of a function.
 * @param[in] f A function, or null.
 * @return Static string; empty for null.
 * @since 0.1
 */
FREEAIR_API const char *freeair_function_source(const freeair_function *f);

/** Cautions that belong beside a function's result.
 * @param[in] f A function, or null.
 * @return Bits of freeair_caution; 0 for null.
 * @since 0.1
 */
FREEAIR_API uint32_t freeair_function_cautions(const freeair_function *f);

/** Number of parameters of a function.
 * @param[in] f A function, or null.
 * @return Count; 0 for null.
 * @since 0.1
 */
FREEAIR_API size_t freeair_function_parameter_count(const freeair_function *f);

/** Parameter of a function by position.
 * @param[in] f A function, or null.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return The parameter, or null.
 * @since 0.1
 */
FREEAIR_API const freeair_parameter *freeair_function_parameter(const freeair_function *f, size_t i);

/** Status code that a function documents, by position.
 * @param[in] f A function, or null.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return A status code, or 1000 past the last.
 * @since 0.1
 */
FREEAIR_API int32_t freeair_function_status_at(const freeair_function *f, size_t i);

/** Number of plain numbers that freeair_function_call takes.
 * @param[in] f A function, or null.
 * @return Count, structures taken field by field; 0 for null.
 * @since 0.1
 */
FREEAIR_API size_t freeair_function_input_count(const freeair_function *f);

/** Number of plain numbers that freeair_function_call returns.
 * @param[in] f A function, or null.
 * @return Count, structures taken field by field; 0 for null.
 * @since 0.1
 */
FREEAIR_API size_t freeair_function_output_count(const freeair_function *f);

/** Input of freeair_function_call by position: a parameter, or a field of a structure.
 * @param[in] f A function, or null.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return The parameter or field, or null.
 * @since 0.1
 */
FREEAIR_API const freeair_parameter *freeair_function_input(const freeair_function *f, size_t i);

/** Output of freeair_function_call by position: a parameter, or a field of a structure.
 * @param[in] f A function, or null.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return The parameter or field, or null.
 * @since 0.1
 */
FREEAIR_API const freeair_parameter *freeair_function_output(const freeair_function *f, size_t i);

/** Parameter that an input of freeair_function_call is a field of.
 * @param[in] f A function, or null.
 * @param[in] i Position, from 0. @range{[0;inf)}
 * @return The structure parameter, or null for an input that is no field.
 * @since 0.1
 */
FREEAIR_API const freeair_parameter *freeair_function_input_parent(const freeair_function *f, size_t i);

/** Calls a function on plain numbers.
 *
 * Inputs and outputs are in the order of freeair_function_input and
 * freeair_function_output. Integers and constants are passed as numbers that
 * have no fraction. NaN for a field that is optional means "not given"; NaN for
 * any other field of a structure keeps its initial value.
 *
 * @param[in]  f     A function without array or text parameters.
 * @param[in]  in    Inputs. @shape{n_in}
 * @param[in]  n_in  Number of inputs; must be freeair_function_input_count. @range{[0;inf)}
 * @param[out] out   Outputs; NaN on error. @shape{n_out}
 * @param[in]  n_out Number of outputs; must be freeair_function_output_count. @range{[0;inf)}
 * @return What the function returned, or FREEAIR_ERR_NULL, FREEAIR_ERR_DATA (wrong count),
 *         FREEAIR_ERR_DOMAIN (a fraction where an integer is due), FREEAIR_ERR_UNSUPPORTED.
 * @since 0.1
 */
FREEAIR_API int32_t freeair_function_call(const freeair_function *f, const double *in, size_t n_in, double *out,
                                          size_t n_out);

/** Applies a function to n elements in strided memory.
 *
 * One argument a parameter, in order: its address for the first element and
 * the bytes to the next. A step of 0 broadcasts one value. An array or a
 * structure parameter's argument is the address of its first element or of the
 * structure; a text parameter's is the address of a const char *. An element
 * that fails does not stop the rest; results equal those of single calls.
 *
 * @param[in]     f      A function.
 * @param[in]     n      Number of elements. @range{[0;inf)}
 * @param[in,out] args   Addresses, one a parameter.
 * @param[in]     steps  Bytes from one element to the next, one a parameter.
 * @param[out]    status Status of each element, or null. @shape{n}
 * @return Number of elements with a negative status; n when f, args or steps is null.
 * @since 0.1
 */
FREEAIR_API size_t freeair_map(const freeair_function *f, size_t n, char **args, const ptrdiff_t *steps,
                               int32_t *status);

/** @} */

#ifdef __cplusplus
}
#endif

#endif
