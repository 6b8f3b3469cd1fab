#include "core/exchange/json/syntax.h"

#include "core/quantity/utf8.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace warmbench::json {
namespace {

/// Walks once through the text; the first fault ends it.
class SyntaxCheck {
public:
    explicit SyntaxCheck(std::string_view text) : m_text(text) {}

    std::optional<std::string> run() {
        if (!value(0)) return m_fault;
        skipSpace();
        if (m_at < m_text.size()) fail("the end of the file");
        return m_fault;
    }

private:
    [[nodiscard]] char here() const { return m_at < m_text.size() ? m_text[m_at] : '\0'; }
    [[nodiscard]] bool atDigit() const { return here() >= '0' && here() <= '9'; }

    void skipSpace() {
        while (here() == ' ' || here() == '\n' || here() == '\r' || here() == '\t') ++m_at;
    }

    bool take(char expected) {
        if (here() != expected) return false;
        ++m_at;
        return true;
    }

    bool fail(const std::string& expected) {
        const std::string_view before = m_text.substr(0, m_at);
        const auto line = std::count(before.begin(), before.end(), '\n') + 1;
        const auto column = m_at - (before.rfind('\n') + 1) + 1;
        m_fault = "not JSON: line " + std::to_string(line) + ", column " + std::to_string(column) +
                  ": found " + found() + ", expected " + expected;
        return false;
    }

    [[nodiscard]] std::string found() const {
        if (m_at >= m_text.size()) return "the end of the file";
        const char c = m_text[m_at];
        if (c > ' ' && c < '\x7F') return std::string(1, c);
        static constexpr std::string_view hexadecimal = "0123456789abcdef";
        const auto byte = static_cast<unsigned char>(c);
        return std::string("byte 0x") + hexadecimal[byte >> 4] + hexadecimal[byte & 15];
    }

    bool value(int depth) {
        skipSpace();
        switch (here()) {
        case '{':
            return container(depth + 1, '}');
        case '[':
            return container(depth + 1, ']');
        case '"':
            return string();
        case 't':
            return word("true");
        case 'f':
            return word("false");
        case 'n':
            return word("null");
        case 'N':
            return word("NaN");
        case 'I':
            return word("Infinity");
        default:
            return number();
        }
    }

    bool container(int depth, char close) {
        if (depth > deepestNesting) {
            m_fault = "nesting above " + std::to_string(deepestNesting) + " levels";
            return false;
        }
        ++m_at;
        skipSpace();
        if (take(close)) return true;
        while (true) {
            if (close == '}' && !key()) return false;
            if (!value(depth)) return false;
            skipSpace();
            if (take(close)) return true;
            if (!take(',')) return fail(std::string("',' or '") + close + "'");
        }
    }

    bool key() {
        skipSpace();
        if (here() != '"') return fail("a key in quotes");
        if (!string()) return false;
        skipSpace();
        return take(':') || fail("':'");
    }

    bool word(std::string_view expected) {
        if (m_text.substr(m_at, expected.size()) != expected) return fail("a value");
        m_at += expected.size();
        return true;
    }

    bool number() {
        const bool negative = take('-');
        if (negative && here() == 'I') return word("Infinity");
        if (!atDigit()) return fail(negative ? "a digit" : "a value");
        if (!take('0')) digits();
        if (here() == '.' && !fraction()) return false;
        if (here() != 'e' && here() != 'E') return true;
        ++m_at;
        if (here() == '+' || here() == '-') ++m_at;
        if (!atDigit()) return fail("a digit");
        digits();
        return true;
    }

    bool fraction() {
        ++m_at;
        if (!atDigit()) return fail("a digit");
        digits();
        return true;
    }

    void digits() {
        while (atDigit()) ++m_at;
    }

    bool string() {
        ++m_at;
        while (m_at < m_text.size()) {
            const auto c = static_cast<unsigned char>(m_text[m_at]);
            if (c == '"') {
                ++m_at;
                return true;
            }
            if (c == '\\') {
                if (!escape()) return false;
            } else if (c < ' ') {
                return fail("a character of a string");
            } else if (c < 0x80) {
                ++m_at;
            } else {
                const std::size_t length = utf8Length(m_text.substr(m_at, 4));
                if (length == 0) return fail("UTF-8");
                m_at += length;
            }
        }
        return fail("the closing quote");
    }

    bool escape() {
        ++m_at;
        static constexpr std::string_view single = "\"\\/bfnrt";
        const char c = here();
        if (c != 'u') {
            if (m_at >= m_text.size() || single.find(c) == std::string_view::npos) return fail("an escape");
            ++m_at;
            return true;
        }
        ++m_at;
        for (int i = 0; i < 4; ++i, ++m_at) {
            const bool isHexadecimal =
                atDigit() || (here() >= 'a' && here() <= 'f') || (here() >= 'A' && here() <= 'F');
            if (!isHexadecimal) return fail("four hexadecimal digits");
        }
        return true;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    std::optional<std::string> m_fault;
};

} // namespace

std::optional<std::string> syntaxFault(std::string_view text) {
    return SyntaxCheck{text}.run();
}

} // namespace warmbench::json
