#pragma once

#include <QStringList>
#include <QTranslator>
#include <QWidget>

namespace warmbench::tests {

/// Texts in a window for which there is too little room, and controls that cover each other; each with the
/// name of its widget. Empty for a sound window.
[[nodiscard]] QStringList clippedTexts(const QWidget& window);

/// A language whose words are two fifths longer than English ones.
class LongerWords : public QTranslator {
    Q_OBJECT
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char* note,
                                    int count) const override;
};

} // namespace warmbench::tests
