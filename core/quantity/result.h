#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>

// Behind the library's own headers: Qt's moc stumbles over <compare> where that comes first.
#include "core/quantity/phrase.h"

namespace warmbench {

/// Why something that a person asked for cannot be done, in her words: what was found, what was expected,
/// what to do. `place` names the file, line, field or thing; empty where the whole is meant.
struct Refusal {
    std::string place;
    Phrase what;

    /// `place: what`, or `what` alone.
    [[nodiscard]] std::string text() const {
        return place.empty() ? what.text() : place + ": " + what.text();
    }
    friend bool operator==(const Refusal&, const Refusal&) = default;
};

/// A value, or the refusal that stands in its place.
template <class T>
class Result {
public:
    Result(T value) : m_content(std::in_place_index<0>, std::move(value)) {}
    Result(Refusal refusal) : m_content(std::in_place_index<1>, std::move(refusal)) {}

    [[nodiscard]] bool ok() const { return m_content.index() == 0; }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] T& value() { return std::get<0>(m_content); }
    [[nodiscard]] const T& value() const { return std::get<0>(m_content); }
    T& operator*() { return value(); }
    const T& operator*() const { return value(); }
    T* operator->() { return &value(); }
    const T* operator->() const { return &value(); }
    [[nodiscard]] const Refusal& refusal() const { return std::get<1>(m_content); }

private:
    std::variant<T, Refusal> m_content;
};

/// Nothing went wrong, or the refusal.
using Outcome = std::optional<Refusal>;

} // namespace warmbench
