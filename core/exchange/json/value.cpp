#include "core/exchange/json/value.h"

#include "core/exchange/json/syntax.h"

#include <algorithm>

namespace warmbench::json {
namespace {

constexpr std::string_view space = " \t\r\n";

std::string_view withoutSpace(std::string_view text) {
    const std::size_t start = text.find_first_not_of(space);
    return start == std::string_view::npos ? std::string_view{} : text.substr(start);
}

/// Length of the string at the front of `text`, with its quotes.
std::size_t stringLength(std::string_view text) {
    std::size_t at = 1;
    while (text[at] != '"') at += text[at] == '\\' ? 2 : 1;
    return at + 1;
}

std::size_t containerLength(std::string_view text) {
    int depth = 0;
    std::size_t at = 0;
    do {
        switch (text[at]) {
        case '"':
            at += stringLength(text.substr(at));
            continue;
        case '[':
        case '{':
            ++depth;
            break;
        case ']':
        case '}':
            --depth;
            break;
        default:
            break;
        }
        ++at;
    } while (depth > 0);
    return at;
}

/// Length of the number, true, false or null at the front of `text`.
std::size_t wordLength(std::string_view text) {
    const auto ends = [](char c) {
        return c == ',' || c == ']' || c == '}' || space.find(c) != std::string_view::npos;
    };
    return static_cast<std::size_t>(std::find_if(text.begin(), text.end(), ends) - text.begin());
}

std::size_t valueLength(std::string_view text) {
    switch (text.front()) {
    case '"':
        return stringLength(text);
    case '[':
    case '{':
        return containerLength(text);
    default:
        return wordLength(text);
    }
}

/// The code unit of `XXXX` at the front of `text`.
char32_t codeUnit(std::string_view text) {
    char32_t unit = 0;
    for (const char c : text.substr(0, 4)) {
        const int digit = c <= '9' ? c - '0' : (c | 0x20) - 'a' + 10;
        unit = unit * 16 + static_cast<char32_t>(digit);
    }
    return unit;
}

void appendUtf8(std::string& text, char32_t c) {
    const auto add = [&](char32_t byte) { text += static_cast<char>(byte); };
    if (c < 0x80) {
        add(c);
        return;
    }
    if (c < 0x800) {
        add(0xC0 | c >> 6);
    } else {
        if (c < 0x10000) {
            add(0xE0 | c >> 12);
        } else {
            add(0xF0 | c >> 18);
            add(0x80 | (c >> 12 & 0x3F));
        }
        add(0x80 | (c >> 6 & 0x3F));
    }
    add(0x80 | (c & 0x3F));
}

/// Appends the character that the escape at the front of `text` stands for; the length of the escape.
std::size_t appendEscaped(std::string& decoded, std::string_view text) {
    switch (text[1]) {
    case 'b':
        decoded += '\b';
        return 2;
    case 'f':
        decoded += '\f';
        return 2;
    case 'n':
        decoded += '\n';
        return 2;
    case 'r':
        decoded += '\r';
        return 2;
    case 't':
        decoded += '\t';
        return 2;
    case 'u':
        break;
    default:
        decoded += text[1];
        return 2;
    }
    const char32_t unit = codeUnit(text.substr(2));
    if (unit >= 0xD800 && unit < 0xDC00 && text.substr(6, 2) == "\\u") {
        const char32_t low = codeUnit(text.substr(8));
        if (low >= 0xDC00 && low < 0xE000) {
            appendUtf8(decoded, 0x10000 + ((unit - 0xD800) << 10) + (low - 0xDC00));
            return 12;
        }
    }
    appendUtf8(decoded, unit);
    return 6;
}

} // namespace

Kind Value::kind() const {
    switch (m_text.front()) {
    case 'n':
        return Kind::Null;
    case 't':
    case 'f':
        return Kind::Boolean;
    case '"':
        return Kind::String;
    case '[':
        return Kind::List;
    case '{':
        return Kind::Object;
    default:
        return Kind::Number;
    }
}

std::string_view Value::source() const {
    return m_text.substr(0, valueLength(m_text));
}

std::string Value::string() const {
    std::string_view inside = source();
    inside = inside.substr(1, inside.size() - 2);
    if (inside.find('\\') == std::string_view::npos) return std::string{inside};
    std::string decoded;
    for (std::size_t at = 0; at < inside.size();) {
        if (inside[at] == '\\')
            at += appendEscaped(decoded, inside.substr(at));
        else
            decoded += inside[at++];
    }
    return decoded;
}

Children::Children(Value container)
    : m_rest(container.m_text.substr(1)), m_keyed(container.kind() == Kind::Object) {}

std::optional<Value> Children::next() {
    m_rest = withoutSpace(m_rest);
    if (m_rest.empty() || m_rest.front() == ']' || m_rest.front() == '}') return std::nullopt;
    if (m_rest.front() == ',') m_rest = withoutSpace(m_rest.substr(1));
    if (m_keyed) {
        m_key = Value{m_rest};
        m_rest = withoutSpace(m_rest.substr(stringLength(m_rest)));
        m_rest = withoutSpace(m_rest.substr(1));
    }
    const Value value{m_rest};
    m_rest.remove_prefix(valueLength(m_rest));
    ++m_count;
    return value;
}

Result<Value> parse(std::string_view text) {
    if (auto fault = syntaxFault(text)) return Refusal{"", *std::move(fault)};
    return Value{withoutSpace(text)};
}

} // namespace warmbench::json
