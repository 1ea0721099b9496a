// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <optional>

#include "app/canvas/tools/tool.h"

namespace howlmap::app {

class MeasureItem;

/// Measures between two places or two objects: distance, bearing, travel time, whole waves at the chosen frequency.
/// By mouse from where it was pressed; by keys from the object that is selected when the tool is taken to the one that
/// is selected then, so that Tab walks from one reading to the next. What was measured is followed as it moves.
class MeasureTool : public Tool {
  public:
    explicit MeasureTool(PlanView& view);
    ~MeasureTool() override;
    void press(const Pointer& pointer) override;
    void drag(const Pointer& pointer) override;
    void release(const Pointer& pointer) override;
    bool cancel() override;
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }

  private:
    /// An object, or where there is none a place on the floor.
    struct End {
        std::string id;
        Vec3 place;
    };
    End end_at(const Pointer& pointer) const;
    std::optional<End> end_of(const QString& id) const;
    Vec3 place_of(const End& end) const;
    void begin_at_selection();
    void follow_selection();
    void refresh();

    MeasureItem* item_;
    std::optional<End> from_, to_;
    QObject context_;  ///< of the connections
};

}  // namespace howlmap::app
