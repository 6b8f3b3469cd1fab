#include "core/exchange/table/table_text.h"

#include "core/exchange/file/file.h"

namespace warmbench::exchange {

Result<std::string> readTableText(const std::string& path) {
    constexpr std::size_t most = std::size_t{1} << 30;
    auto text = readFile(path, most + 1);
    if (text && text->size() > most)
        return Refusal{path, phrase("found more than 1 GiB, expected at most that")};
    return text;
}

} // namespace warmbench::exchange
