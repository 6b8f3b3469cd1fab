#include "core/exchange/json/text.h"

#include <algorithm>
#include <cstdio>

namespace warmbench::json {
namespace {

constexpr std::size_t longestShown = 40;

/// Whether a surrogate's three bytes, which are no UTF-8, are at the front of `text`.
bool startsWithSurrogate(std::string_view text) {
    return text.size() >= 3 && text[0] == '\xED' && static_cast<unsigned char>(text[1]) >= 0xA0;
}

void appendEscape(std::string& out, unsigned unit) {
    char escape[8];
    std::snprintf(escape, sizeof escape, "\\u%04x", unit);
    out += escape;
}

} // namespace

std::string inQuotes(std::string_view text) {
    std::string out = "\"";
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            out += '\\';
            out += c;
        } else if (c == '\n') {
            out += "\\n";
        } else if (byte < ' ') {
            appendEscape(out, byte);
        } else if (startsWithSurrogate(text.substr(i))) {
            const auto low6 = [&](std::size_t k) { return static_cast<unsigned char>(text[k]) & 0x3FU; };
            appendEscape(out, 0xD000U | low6(i + 1) << 6 | low6(i + 2));
            i += 2;
        } else {
            out += c;
        }
    }
    return out + '"';
}

std::string shown(Value value) {
    std::string text{value.source()};
    std::replace_if(
        text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < ' '; }, ' ');
    if (text.size() <= longestShown) return text;
    std::size_t end = longestShown - 3;
    while ((text[end] & '\xC0') == '\x80') --end; // not in the middle of a character
    return text.substr(0, end) + "...";
}

} // namespace warmbench::json
