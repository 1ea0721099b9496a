// SPDX-License-Identifier: GPL-3.0-or-later
// The plan: the open show seen from above, audience at the bottom, stage left on the right of the page.
#pragma once
#include <QGraphicsView>
#include <QStringList>
#include <memory>
#include <optional>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/document/selection.h"
#include "app/document/trouble.h"
#include "app/export/labels.h"
#include "core/show/edits.h"

class QAction;

namespace howlmap::app {

class PlanScene;
class PlanTools;
class PlanFurniture;
class PlanRulers;
class PlanLayers;
class Nudge;
class PlanActions;
class DragReading;
class Guides;
class Handles;

enum class ToolKind { select, measure, outline };
enum class OverlayKind { none, feedback, loudspeaker, level, wash };

/// Which map lies under the objects.
struct OverlayChoice {
    OverlayKind kind = OverlayKind::none;
    QString subject;  ///< id: the input of a feedback map, the loudspeaker of a loudspeaker map, the mix of a level map
    std::optional<int> band;   ///< third-octave band 0..30 of a level map; absent: all, A-weighted
    double opacity = 0.85;     ///< 0..1
    std::optional<double> hz;  ///< one frequency of a feedback or loudspeaker map instead of the worst of all
    friend bool operator==(const OverlayChoice&, const OverlayChoice&) = default;
};

class PlanView : public QGraphicsView {
    Q_OBJECT
  public:
    PlanView(Document& document, Selection& selection, AnalysisService& analysis, QWidget* parent = nullptr);
    ~PlanView() override;

    ToolKind tool() const;
    const OverlayChoice& overlay() const { return overlay_; }
    const std::optional<Ring>& highlight() const { return highlight_; }
    /// Hz at which lobes and patterns are drawn and waves are counted: what the map is asked for, else that of the
    /// highlighted ring, else that of the worst ring, else 1 kHz.
    double shown_frequency() const;
    bool snapping() const { return snapping_; }
    bool grid_visible() const { return grid_visible_; }
    bool rulers_visible() const { return rulers_visible_; }
    double pixels_per_metre() const;
    /// Between a place on the plan in metres and a point of the viewport.
    Vec2 plan_point(QPoint viewport_point) const;
    QPoint viewport_point(Vec2 plan_point) const;
    /// Everything that can be done on the plan, for menus, the tool bar and the context menu.
    PlanActions& plan_actions() { return *actions_; }

    Document& document() { return document_; }
    Selection& selection() { return selection_; }
    AnalysisService& analysis() { return analysis_; }
    PlanScene& plan_scene() { return *scene_; }
    Handles& handles() { return *handles_; }
    Guides& guides() { return *guides_; }
    PlanLayers& layers() { return *layers_; }
    DragReading& reading() { return *reading_; }
    const PlanRulers& rulers() const { return *rulers_; }

  public Q_SLOTS:
    void set_tool(howlmap::app::ToolKind tool);
    void set_overlay(const howlmap::app::OverlayChoice& choice);
    void set_snapping(bool on);
    void set_grid_visible(bool on);
    void set_rulers_visible(bool on);
    /// Lights the loop that carries most of a ring; its line alone is labelled. No value: none.
    void set_highlight(const std::optional<howlmap::Ring>& ring);
    /// Draws a show as a ghost over the plan: what a cure would move. No value: none.
    void set_ghost(const std::optional<howlmap::Show>& show);

    void zoom_in();
    void zoom_out();
    void zoom_fit();
    void zoom_selection();
    void zoom_actual();  ///< 100 %: one metre is 100 pixels

    /// Places what a preset describes (JSON as in the parts list) at a point in metres, or in the middle of the view.
    bool place(const QByteArray& preset_json, std::optional<howlmap::Vec2> at = std::nullopt);

    void cut();
    void copy();
    void paste();
    void duplicate_selected();
    void remove_selected();
    void select_all();
    void select_none();
    void select_same_kind();
    void turn_selected(double by_deg);
    void mirror_selected();
    void align_selected(howlmap::AlignTo to);
    void spread_selected(howlmap::SpreadAlong along);
    void set_selected_locked(bool locked);
    /// Nudges that follow one another soon are one step.
    void nudge_selected(howlmap::Vec2 by);
    /// Esc: gives up the drag or tool in hand; with none, selects nothing.
    void escape();

  Q_SIGNALS:
    void tool_changed(howlmap::app::ToolKind tool);
    void overlay_changed();
    void shown_frequency_changed(double hz);
    void zoom_changed(double pixels_per_metre);
    void pointer_reading(const QString& text);           ///< for the status bar: place and map value under the pointer
    void trouble(const howlmap::app::Trouble& trouble);  ///< something could not be done: asks for attention
    void message(const QString& text);                   ///< one sentence about what just happened or why nothing did

  protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void drawBackground(QPainter* painter, const QRectF& rect) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void changeEvent(QEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;
    /// Tab goes from object to object, upstage first, and leaves the plan after the last.
    bool focusNextPrevChild(bool next) override;

  private:
    void follow_frequency();
    void zoom_to(double pixels_per_metre, QPoint anchor);
    void show_rect(const QRectF& rect);
    NameRoom name_room() const;
    void after_zoom();
    void panned() { fits_ = false; }
    friend class PlanTools;
    void read_place(QPoint viewport_point);
    QPoint menu_place() const;
    void open_context_menu(QPoint global);
    Ids selected_ids() const;
    void add_part(Show part, const QString& step, std::optional<Vec2> middle);

    Document& document_;
    Selection& selection_;
    AnalysisService& analysis_;
    OverlayChoice overlay_;
    double told_hz_ = 0.0;  ///< shown_frequency() when it was last told
    std::optional<Ring> highlight_;
    bool snapping_ = true, grid_visible_ = true, rulers_visible_ = true;
    bool fits_ = true;            ///< the whole plan stays in view until the user zooms or pans
    bool legend_fitted_ = false;  ///< the last fit knew of a legend
    int pastes_ = 0;              ///< how often the same clipboard was pasted: each lands a little further
    std::unique_ptr<PlanScene> scene_;
    std::unique_ptr<Guides> guides_;
    std::unique_ptr<PlanTools> tools_;
    std::unique_ptr<Nudge> nudge_;
    Handles* handles_ = nullptr;
    DragReading* reading_ = nullptr;
    PlanLayers* layers_ = nullptr;
    PlanFurniture* furniture_ = nullptr;
    PlanRulers* rulers_ = nullptr;
    PlanActions* actions_ = nullptr;
};

}  // namespace howlmap::app
