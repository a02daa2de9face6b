"""Settings of Sphinx for the handbook; CMake passes what differs from build to build."""

project = "fieldshaft"
copyright = "the fieldshaft authors"  # noqa: A001
html_title = "The fieldshaft handbook"
html_show_copyright = False

extensions = ["myst_parser", "breathe"]
myst_enable_extensions = ["colon_fence"]
myst_heading_anchors = 3
nitpicky = True  # a reference that leads nowhere ends the build ...
nitpick_ignore_regex = [("cpp:identifier", ".*"), ("cpp:.*", "(std|boost|Eigen|nlohmann)($|:.*)")]  # ... in what is ours
breathe_default_project = "fieldshaft"
breathe_show_include = False
primary_domain = "cpp"
highlight_language = "none"  # a comment is no program; the pages name the language of theirs

html_theme = "alabaster"
html_theme_options = {"page_width": "1200px", "sidebar_width": "260px", "show_powered_by": False, "description": "Can this tractor run this implement?"}
html_sidebars = {"**": ["about.html", "searchbox.html", "navigation.html"]}
html_css_files = ["handbook.css"]
html_copy_source = False
