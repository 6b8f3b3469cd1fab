#pragma once

#include "core/quantity/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// A strict reader of JSON for the file formats whose faults must be named exactly: numbers keep their
/// decimals, keys that stand twice are seen, and every refusal knows its JSON pointer. Values are views of
/// the text, so that reading costs no memory whatever the file holds; the text must outlive them.
namespace warmbench::json {

enum class Kind : std::uint8_t { Null, Boolean, Number, String, List, Object };

/// One value of a text that `parse` has accepted.
class Value {
public:
    Value() = default; ///< null

    [[nodiscard]] Kind kind() const;
    [[nodiscard]] bool isTrue() const { return m_text.front() == 't'; }
    /// The value as it is written.
    [[nodiscard]] std::string_view source() const;
    /// A string's characters in UTF-8; a lone surrogate becomes the three bytes of its number.
    [[nodiscard]] std::string string() const;

private:
    friend class Children;
    friend Result<Value> parse(std::string_view text);
    explicit Value(std::string_view text) : m_text(text) {}

    std::string_view m_text = "null"; ///< from the value to the end of the document
};

/// Walks once over the items of a list or the members of an object.
class Children {
public:
    Children() = default; ///< none
    explicit Children(Value container);

    /// The next value; nothing after the last.
    [[nodiscard]] std::optional<Value> next();
    /// Of the value that `next` gave last: its position, from 0.
    [[nodiscard]] std::size_t index() const { return m_count - 1; }
    /// Of the member that `next` gave last: its key.
    [[nodiscard]] std::string key() const { return m_key.string(); }

private:
    std::string_view m_rest; ///< after the last value, or after the opening bracket; empty when done
    std::size_t m_count = 0;
    bool m_keyed = false;
    Value m_key;
};

/// The value that a whole text holds. Refused, for the whole document, where it is not JSON.
[[nodiscard]] Result<Value> parse(std::string_view text);

} // namespace warmbench::json
