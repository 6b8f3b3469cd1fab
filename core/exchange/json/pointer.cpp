#include "core/exchange/json/pointer.h"

#include <cassert>

namespace warmbench::json {

Pointer Pointer::below(Step step) const {
    assert(m_count < deepest);
    Pointer place = *this;
    place.m_steps[place.m_count++] = step;
    return place;
}

std::string Pointer::text() const {
    std::string text;
    for (std::size_t i = 0; i < m_count; ++i) {
        text += '/';
        if (!m_steps[i].isKey) text += std::to_string(m_steps[i].index);
        for (const char c : m_steps[i].key) {
            if (c == '~')
                text += "~0";
            else if (c == '/')
                text += "~1";
            else
                text += static_cast<unsigned char>(c) < ' ' ? '?' : c; // a place stays on its line
        }
    }
    return text;
}

} // namespace warmbench::json
