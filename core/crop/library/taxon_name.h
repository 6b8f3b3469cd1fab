#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// A plant's name as it is compared: lower case (ASCII), a cross as ` x `, straight quotation marks, single
/// blanks. `Abelia ×grandiflora` and `abelia x  grandiflora` are the same.
[[nodiscard]] std::string nameKey(std::string_view name);

/// The key of the species or hybrid that a name is of, without cultivar or words in brackets, such as
/// `camellia japonica` for `Camellia japonica 'Nine Bends'`; empty where fewer than two words are left.
[[nodiscard]] std::string speciesKey(std::string_view name);

/// The key of a name's genus, such as `cuprocyparis` for `× Cuprocyparis leylandii`.
[[nodiscard]] std::string genusKey(std::string_view name);

/// Parts of a text between separators, without the blanks round them; empty parts are left out.
[[nodiscard]] std::vector<std::string> splitText(std::string_view text, char separator);

} // namespace warmbench
