#pragma once

#include "core/exchange/json/number.h"
#include "core/exchange/json/pointer.h"
#include "core/exchange/json/value.h"

#include <initializer_list>
#include <limits>
#include <span>
#include <utility>
#include <vector>

namespace warmbench::json {

/// Names of fields.
using Keys = std::span<const std::string_view>;

/// The fields of an object that has been checked to have all that it must and nothing unknown.
class Fields {
public:
    /// A field that is there.
    [[nodiscard]] Value operator[](std::string_view key) const { return find(key).value_or(Value{}); }
    [[nodiscard]] std::optional<Value> find(std::string_view key) const;
    [[nodiscard]] bool has(std::string_view key) const { return find(key).has_value(); }

private:
    friend class Reader;
    std::vector<std::pair<std::string_view, Value>> m_fields;
};

/// Bounds of a number, counted in 10^-places, both within.
struct Bounds {
    std::int64_t least = std::numeric_limits<std::int64_t>::min();
    std::int64_t most = std::numeric_limits<std::int64_t>::max();
};

/// Reads values as what they are expected to be, and keeps the first refusal. After it every read gives
/// nothing (null, 0, no items) and changes nothing, so that a format is read straight down, without a branch
/// after each value; ask `failed` before relying on what was read.
class Reader {
public:
    [[nodiscard]] bool failed() const { return m_refusal.has_value(); }
    /// The first refusal; its place is a JSON pointer.
    [[nodiscard]] const Outcome& refusal() const { return m_refusal; }
    /// Refuses, unless something was refused before.
    void refuse(const Pointer& at, std::string what);

    /// An object with all of the `required` fields, perhaps `optional` ones, no other, and none twice. The
    /// keys must outlive the fields.
    Fields object(Value value, const Pointer& at, Keys required, Keys optional);
    Fields object(Value value, const Pointer& at, std::initializer_list<std::string_view> required,
                  std::initializer_list<std::string_view> optional = {}) {
        return object(value, at, Keys{required.begin(), required.end()},
                      Keys{optional.begin(), optional.end()});
    }
    /// A list of `least` to `most` items.
    Children list(Value value, const Pointer& at, std::size_t least = 0,
                  std::size_t most = std::numeric_limits<std::size_t>::max());
    /// A number with at most `places` decimals, below 10^12 in magnitude, as a count of 10^-places.
    std::int64_t number(Value value, const Pointer& at, int places, Bounds bounds = {});
    /// A number below 10^12 in magnitude with any decimals, as the greatest count of 10^-places not above it.
    std::int64_t numberRoundedDown(Value value, const Pointer& at, int places);
    std::int64_t integer(Value value, const Pointer& at, Bounds bounds = {}) {
        return number(value, at, 0, bounds);
    }
    /// A string, which may be empty.
    std::string string(Value value, const Pointer& at);
    /// A string that is not empty.
    std::string name(Value value, const Pointer& at);
    bool boolean(Value value, const Pointer& at);

private:
    using Parts = std::variant<std::int64_t, Decimal::Fault>;
    std::int64_t count(Value value, const Pointer& at, int places, Parts (Decimal::*parts)(int) const);
    bool expect(Kind kind, Value value, const Pointer& at, const char* expected);

    Outcome m_refusal;
};

} // namespace warmbench::json
