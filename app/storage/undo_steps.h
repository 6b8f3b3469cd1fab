#pragma once

#include "app/storage/store.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace warmbench::app {

/// What somebody has done to a book and can take back, and what was taken back and can be done again. Both
/// stand in the journal, which only grows: what is kept here is where. So nothing is forgotten when the
/// program is closed, and a long day costs no memory.
///
/// An entry of the journal is a step, `Undo: ` a step, or `Redo: ` a step; each is that person's. The entry
/// that made the book can't be taken back.
class UndoSteps {
public:
    struct Step {
        std::int64_t seq = 0; ///< of the journal entry whose inverse takes it back, or does it again
        std::string words;
    };

    /// Reads the latest steps of whom the store names now from its journal. The store must outlive this.
    Outcome read(const Store& store);
    void clear();

    /// The step that would be taken back, or done again; null where there is none.
    [[nodiscard]] const Step* toUndo() const { return m_done.empty() ? nullptr : &m_done.back(); }
    [[nodiscard]] const Step* toRedo() const { return m_undone.empty() ? nullptr : &m_undone.back(); }

    /// A step was done by this entry of the journal.
    void add(std::int64_t seq, const std::string& words);
    /// The step `toUndo` was taken back by this entry; reads earlier ones where it was the last that is
    /// known.
    Outcome undone(std::int64_t seq);
    /// The step `toRedo` was done again by this entry.
    void redone(std::int64_t seq);

    [[nodiscard]] static std::string undoWords(const Step& step);
    [[nodiscard]] static std::string redoWords(const Step& step);

private:
    enum class Way { Done, TakenBack, DoneAgain };
    /// What an entry of the journal says of a step.
    struct Told {
        Way way = Way::Done;
        std::string step;
    };
    [[nodiscard]] static Told told(const std::string& words);

    Outcome readEarlier();

    const Store* m_store = nullptr;
    std::string m_who;
    std::int64_t m_readFrom = 0; ///< entries from this one on are known
    bool m_more = false;         ///< there may be earlier ones
    /// Steps before m_readFrom that are known to have been taken back, by their words.
    std::map<std::string, int> m_takenBack;
    std::vector<Step> m_done;   ///< the last done last
    std::vector<Step> m_undone; ///< the last taken back last
};

} // namespace warmbench::app
